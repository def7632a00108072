using Spoolbook.Reading.Trees;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Keys;

/// <summary>Findings about the keys of a map, before any value is read.</summary>
static class KeyFindings
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
                    Sentence.Of("sheet/unknown-key.message", ("key", Quote.Short(key.Text)), ("owner", table.Owner)),
                    key.Place,
                    HelpFor(key.Text, value, map.InBrackets, table)
                );
            }
        }
    }

    public static void CheckMissing(MapNode map, KeyTable table, Place head, FindingList findings)
    {
        // A misspelt required key is already reported as unknown: once is enough.
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
                    Sentence.Of("sheet/missing-key.message", ("owner", table.Owner), ("key", key.Name)),
                    head,
                    Add(key)
                );
            }
            else if (entry.Value is ScalarNode { IsBlank: true })
            {
                findings.Add(
                    SheetChecks.MissingKey,
                    Sentence.Of("sheet/missing-key.message.blank", ("key", key.Name), ("owner", table.Owner)),
                    entry.Key.Place,
                    Sentence.Of("sheet/missing-key.help.blank", ("line", Line(key)), ("about", key.Description))
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
            var names = Or(table.Either.Select(k => Sentence.Plain($"`{k.Name}:`")));
            findings.Add(
                SheetChecks.MissingKey,
                Sentence.Of("sheet/missing-key.message.either", ("owner", table.Owner), ("names", names)),
                head,
                Add(table.Either[0])
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
            Sentence.Of("sheet/written-twice.message", ("first", first.Key.Text), ("second", second.Key.Text)),
            second.Key.Place,
            Sentence.Of("sheet/written-twice.help"),
            (first.Key.Place, Sentence.Of("sheet/written-twice.other"))
        );

    static Sentence HelpFor(string written, Node value, bool inBrackets, KeyTable table)
    {
        // In brackets YAML takes what follows a comma for a key of its own.
        var mayBeText = inBrackets && value is ScalarNode { IsBlank: true } && written.Length > 0;
        if (written.IndexOf(':', StringComparison.Ordinal) is > 0 and var colon && table.Find(written[..colon]) is not null)
        {
            return Sentence.Of("sheet/unknown-key.help.blank", ("written", $"{written[..colon]}: {written[(colon + 1)..].Trim()}"));
        }

        if (mayBeText && char.IsAsciiDigit(written[0]))
        {
            return Sentence.Of("sheet/unknown-key.help.decimals");
        }

        return NearestKey(written, table) is { } nearest ? Sentence.Of("common.did-you-mean", ("near", nearest))
            : mayBeText ? Sentence.Of("sheet/unknown-key.help.comma")
            : KeyHomes.Find(written) is [_, ..] homes ? Sentence.Of("sheet/unknown-key.help.home", ("key", written), ("homes", Or(homes)))
            : Sentence.Of(
                "sheet/unknown-key.help.keys",
                ("owner", table.Owner),
                ("keys", string.Join(", ", table.Keys.Select(k => k.Name)))
            );
    }

    static string? NearestKey(string written, KeyTable table) =>
        table.AlsoCalled.FirstOrDefault(c => c.Word.Equals(written, StringComparison.OrdinalIgnoreCase)).Key?.Name
        ?? Likeness.Nearest(written, table.Keys.Select(k => k.Name));

    // The description is English in the reference and in the schemas, and so it is here.
    static Sentence Add(Key key) => Sentence.Of("sheet/missing-key.help", ("line", Line(key)), ("about", key.Description));

    static Sentence Or(IEnumerable<Sentence> things) =>
        things.Aggregate((before, last) => Sentence.Of("list.or", ("before", before), ("last", last)));
}
