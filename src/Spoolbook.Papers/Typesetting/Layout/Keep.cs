namespace Spoolbook.Papers.Typesetting.Layout;

/// <summary>How much a slice wants to stand on the same page as the next one.</summary>
enum Keep
{
    Free,

    /// <summary>Part of something that should stay whole if a page can hold it.</summary>
    Together,

    /// <summary>A heading, a table's head, the first line of a paragraph: never last on a page.</summary>
    Always,
}
