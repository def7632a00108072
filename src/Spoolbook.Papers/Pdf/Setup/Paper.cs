namespace Spoolbook.Papers.Pdf.Setup;

public enum Paper
{
    Letter,
    A4,
    A6,
}
