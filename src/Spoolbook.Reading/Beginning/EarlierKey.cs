namespace Spoolbook.Reading.Beginning;

/// <summary>A key at the top of an earlier production's file, with its comments and everything under it.</summary>
/// <param name="Text">Its lines, the last one ended. What happened in that production is left out or commented out.</param>
/// <param name="ItemIndent">Columns before its list's dashes; null where it has no list on lines of its own.</param>
public sealed record EarlierKey(string Name, string Text, int? ItemIndent)
{
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
