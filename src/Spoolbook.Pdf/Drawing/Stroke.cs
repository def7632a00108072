namespace Spoolbook.Pdf.Drawing;

public enum Stroke
{
    MoveTo,
    LineTo,
    CurveTo,
    Close,
}
