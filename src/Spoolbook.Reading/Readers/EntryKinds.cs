using System.Collections.Immutable;
using Spoolbook.Reading.Keys;
using Spoolbook.Reading.Trees;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Reading.Readers;

/// <summary>The kind of an item in a log: the word it begins with.</summary>
static class EntryKinds
{
    /// <summary>The kind and the entry under its word; nulls, with a finding, where the item is no entry.</summary>
    /// <param name="example">An entry to show where something else is written.</param>
    public static (EntryKind? Kind, MapEntry? Written) KindOf(
        Node item,
        ImmutableArray<EntryKind> kinds,
        string example,
        FindingList findings
    )
    {
        var all = string.Join(", ", kinds.Select(k => $"`{k.Word}`"));
        if (item is not MapNode { Entries: [var first, .. var rest] })
        {
            findings.Add(
                SheetChecks.WrongKind,
                Sentence.Of("sheet/wrong-kind.message.entry", ("what", item.What)),
                item.Place,
                Sentence.Of("sheet/wrong-kind.help.entry", ("all", all), ("example", example))
            );
            return default;
        }

        var kind = kinds.FirstOrDefault(k => k.Word == first.Key.Text);
        if (kind is null)
        {
            var nearest = Likeness.Nearest(first.Key.Text, kinds.Select(k => k.Word));
            findings.Add(
                SheetChecks.UnknownKey,
                Sentence.Of("sheet/unknown-key.message.entry", ("key", Quote.Short(first.Key.Text))),
                first.Key.Place,
                nearest is null
                    ? Sentence.Of("sheet/unknown-key.help.entries", ("all", all))
                    : Sentence.Of("common.did-you-mean", ("near", nearest))
            );
            return default;
        }

        foreach (var (key, _) in rest)
        {
            findings.Add(
                SheetChecks.UnknownKey,
                Sentence.Of("sheet/unknown-key.message.beside", ("key", Quote.Short(key.Text)), ("entry", kind.Word)),
                key.Place,
                Sentence.Of("sheet/unknown-key.help.beside", ("entry", kind.Word))
            );
        }

        return (kind, first);
    }
}
