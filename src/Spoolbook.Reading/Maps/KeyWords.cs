using Spoolbook.Reading.Keys;
using Spoolbook.Reading.Trees;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Maps;

/// <summary>What there is to say about the keys of a map, before any value is read.</summary>
static class KeyWords
{
    /// <summary>A key with its example, as a line to write.</summary>
    public static string Line(Key key) => $"{key.Name}: {(key.Example.Length > 0 ? key.Example : "…")}";

    public static void CheckUnknown(MapNode map, KeyTable table, FindingList findings)
    {
        foreach (var (key, value) in map.Entries)
        {
            if (table.Find(key.Text) is null)
            {
                findings.Add(SheetChecks.UnknownKey, $"`{Quote.Short(key.Text)}` is not a key of {table.Owner}.", key.Place, HelpFor(key.Text, value, table));
            }
        }
    }

    public static void CheckMissing(MapNode map, KeyTable table, Place head, FindingList findings)
    {
        // A required key that is only misspelt was told as an unknown one: once is enough.
        var misspelt = map.Entries.Where(e => table.Find(e.Key.Text) is null).Select(e => NearestKey(e.Key.Text, table)).ToHashSet();
        foreach (var key in table.Keys)
        {
            if (!key.Required || misspelt.Contains(key.Name))
            {
                continue;
            }

            var entry = map.Entry(key.Name);
            if (entry is null)
            {
                findings.Add(SheetChecks.MissingKey, $"{Capital(table.Owner)} needs `{key.Name}:`, and it is not written.", head, $"Add `{Line(key)}`. {key.Says}");
            }
            else if (entry.Value is ScalarNode { IsBlank: true })
            {
                findings.Add(SheetChecks.MissingKey, $"Nothing is written after `{key.Name}:`, which {table.Owner} needs.", entry.Key.Place, $"Write it like this: `{Line(key)}`. {key.Says}");
            }
        }
    }

    static string HelpFor(string written, Node value, KeyTable table)
    {
        var afterComma = value is ScalarNode { IsBlank: true };
        if (afterComma && written.All(char.IsAsciiDigit))
        {
            return "Between `{` and `}` a comma ends the value before it: write a decimal with a point, `5.6`.";
        }

        if (afterComma && written.Contains(' ', StringComparison.Ordinal))
        {
            return "If it belongs to the text before it: between `{` and `}` a comma ends the text, so put quotes round the whole of it.";
        }

        return NearestKey(written, table) is not { } nearest
            ? $"The keys of {table.Owner}: {string.Join(", ", table.Keys.Select(k => k.Name))}."
            : $"Did you mean `{nearest}`?";
    }

    static string? NearestKey(string written, KeyTable table) => Nearest.To(written, table.Keys.Select(k => k.Name));

    static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
