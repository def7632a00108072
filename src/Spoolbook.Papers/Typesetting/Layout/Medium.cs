namespace Spoolbook.Papers.Typesetting.Layout;

/// <summary>What a page is made for. Rows for the other medium are left out.</summary>
enum Medium
{
    Paper,
    Screen,
}
