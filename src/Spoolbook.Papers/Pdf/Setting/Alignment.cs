namespace Spoolbook.Papers.Pdf.Setting;

enum Alignment
{
    Left,
    Right,
    Center,
}
