using System.Collections.Immutable;
using Spoolbook.Reading.Keys;
using Spoolbook.Reading.Trees;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Reading.Readers;

/// <summary>What kind of entry an item of a log is: the word that it begins with.</summary>
static class EntryWords
{
    /// <summary>The kind and the entry under its word; nulls, with a finding, where the item is no entry.</summary>
    /// <param name="example">An entry, to be shown to who wrote something else.</param>
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
                $"Here belongs an entry of the log, and here is {item.What}.",
                item.Place,
                $"Begin it with one of {all}: `{example}`."
            );
            return default;
        }

        var kind = kinds.FirstOrDefault(k => k.Word == first.Key.Text);
        if (kind is null)
        {
            var nearest = Likeness.Nearest(first.Key.Text, kinds.Select(k => k.Word));
            findings.Add(
                SheetChecks.UnknownKey,
                $"`{Quote.Short(first.Key.Text)}` is not an entry of the log.",
                first.Key.Place,
                nearest is null ? $"An entry is one of {all}." : $"Did you mean `{nearest}`?"
            );
            return default;
        }

        foreach (var (key, _) in rest)
        {
            findings.Add(
                SheetChecks.UnknownKey,
                $"`{Quote.Short(key.Text)}` stands beside `{kind.Word}:` and not in it.",
                key.Place,
                $"Indent it further than `{kind.Word}:`, or begin an entry of its own with `- `."
            );
        }

        return (kind, first);
    }
}
