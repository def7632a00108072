namespace Spoolbook.Reading.Beginning;

/// <summary>A key at the top of an earlier production's file, with its comments and all that is under it.</summary>
/// <param name="Name">The key.</param>
/// <param name="Text">Its lines, the last one ended; what happened in that production is left out or commented out.</param>
/// <param name="ItemIndent">How far its list's dashes stand in; null where it has no list on lines of its own.</param>
public sealed record EarlierKey(string Name, string Text, int? ItemIndent)
{
    /// <summary>The same with more items at the end of its list.</summary>
    /// <param name="items">Each as a map in brackets.</param>
    public EarlierKey With(IReadOnlyCollection<string> items)
    {
        if (items.Count == 0)
        {
            return this;
        }

        if (ItemIndent is { } indent)
        {
            return this with { Text = Text + string.Concat(items.Select(item => $"{new string(' ', indent)}- {item}\n")) };
        }

        var end = Text.LastIndexOf(']');
        return end < 0 ? this : this with { Text = Text.Insert(end, ", " + string.Join(", ", items)) };
    }
}
