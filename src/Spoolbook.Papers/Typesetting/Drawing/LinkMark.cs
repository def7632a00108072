using Spoolbook.Pdf.Structure;

namespace Spoolbook.Papers.Typesetting.Drawing;

/// <summary>A rectangle that links to an address, with a structure element of its own.</summary>
sealed record LinkMark(double X, double Y, double Width, double Height, string Address, StructureElement Element) : PageMark
{
    public override PageMark Shift(double dx, double dy) => this with { X = X + dx, Y = Y + dy };
}
