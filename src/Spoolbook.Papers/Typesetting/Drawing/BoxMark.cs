using Spoolbook.Pdf.Drawing;

namespace Spoolbook.Papers.Typesetting.Drawing;

sealed record BoxMark(double X, double Y, double Width, double Height, Paint Paint) : PageMark
{
    public override PageMark Shift(double dx, double dy) => this with { X = X + dx, Y = Y + dy };
}
