namespace Spoolbook.Papers.Typesetting.Layout;

/// <summary>How strongly a slice is kept on the same page as the next one.</summary>
enum Keep
{
    Free,

    /// <summary>Together, but before a subheading it may come apart, where staying whole would leave much of a page white.</summary>
    Parts,

    /// <summary>Part of something that stays whole if a page can hold it.</summary>
    Together,

    /// <summary>A heading, a table's head, the first line of a paragraph: never last on a page.</summary>
    Always,
}
