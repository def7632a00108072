using Spoolbook.Pdf.Images;

namespace Spoolbook.Papers.Typesetting.Drawing;

sealed record ImageMark(double X, double Y, double Width, double Height, PngPicture Picture) : PageMark
{
    public override PageMark Shift(double dx, double dy) => this with { X = X + dx, Y = Y + dy };
}
