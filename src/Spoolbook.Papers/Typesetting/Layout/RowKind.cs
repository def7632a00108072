namespace Spoolbook.Papers.Typesetting.Layout;

enum RowKind
{
    Head,
    Body,
}
