using Spoolbook.Reading.Trees;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Keys;

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
                findings.Add(
                    SheetChecks.UnknownKey,
                    $"`{Quote.Short(key.Text)}` is not a key of {table.Owner}.",
                    key.Place,
                    HelpFor(key.Text, value, map.InBrackets, table)
                );
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
                findings.Add(
                    SheetChecks.MissingKey,
                    $"{Capital(table.Owner)} needs `{key.Name}:`, and it is not written.",
                    head,
                    $"Add `{Line(key)}`. {key.Description}"
                );
            }
            else if (entry.Value is ScalarNode { IsBlank: true })
            {
                findings.Add(
                    SheetChecks.MissingKey,
                    $"Nothing is written after `{key.Name}:`, which {table.Owner} needs.",
                    entry.Key.Place,
                    $"Write it like this: `{Line(key)}`. {key.Description}"
                );
            }
        }
    }

    public static void CheckEither(MapNode map, KeyTable table, Place head, FindingList findings)
    {
        var written = table
            .Either.Select(k => map.Entry(k.Name))
            .OfType<MapEntry>()
            .Where(e => e.Value is not ScalarNode { IsBlank: true })
            .ToList();
        if (written.Count > 1)
        {
            OnlyOne(written[0], written[1], findings);
        }
        else if (written.Count == 0 && !table.Either.IsEmpty)
        {
            var names = string.Join(" or ", table.Either.Select(k => $"`{k.Name}:`"));
            findings.Add(
                SheetChecks.MissingKey,
                $"{Capital(table.Owner)} needs {names}, and neither is written.",
                head,
                $"Add `{Line(table.Either[0])}`. {table.Either[0].Description}"
            );
        }
    }

    public static void CheckNotBoth(MapNode map, KeyTable table, FindingList findings)
    {
        foreach (var (one, other) in table.NotBoth)
        {
            if (
                map.Entry(one.Name) is { Value: not ScalarNode { IsBlank: true } } first
                && map.Entry(other.Name) is { Value: not ScalarNode { IsBlank: true } } second
            )
            {
                MapEntry[] pair = [first, second];
                var inOrder = pair.OrderBy(e => e.Key.Place.Line).ThenBy(e => e.Key.Place.Column).ToArray();
                OnlyOne(inOrder[0], inOrder[1], findings);
            }
        }
    }

    static void OnlyOne(MapEntry first, MapEntry second, FindingList findings) =>
        findings.Add(
            SheetChecks.WrittenTwice,
            $"Of `{first.Key.Text}:` and `{second.Key.Text}:` only one can be written.",
            second.Key.Place,
            "Keep one of the two.",
            (first.Key.Place, "the other is here")
        );

    static string HelpFor(string written, Node value, bool inBrackets, KeyTable table)
    {
        // What follows a comma between brackets is taken for a key of its own.
        var mayBeText = inBrackets && value is ScalarNode { IsBlank: true } && written.Length > 0;
        if (mayBeText && char.IsAsciiDigit(written[0]))
        {
            return "If it is part of the number before it: write decimals with a point, as in `5.6`.";
        }

        return NearestKey(written, table) is { } nearest ? $"Did you mean `{nearest}`?"
            : mayBeText
                ? "If it is part of the text before it: between brackets a comma ends the text, so put quotes round the whole of it."
            : KeyHomes.Find(written) is { } home ? $"`{written}:` is a key of {home}."
            : $"The keys of {table.Owner}: {string.Join(", ", table.Keys.Select(k => k.Name))}.";
    }

    static string? NearestKey(string written, KeyTable table) => Likeness.Nearest(written, table.Keys.Select(k => k.Name));

    static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
