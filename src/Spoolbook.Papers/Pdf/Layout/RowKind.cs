namespace Spoolbook.Papers.Pdf.Layout;

enum RowKind
{
    Head,
    Body,
}
