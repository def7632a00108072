using System.Collections.Immutable;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Reading.Trees;

/// <summary>Collects the entries of one map: each key once, and what <c>&lt;&lt;</c> merges in.</summary>
sealed class MapEntries(FindingList findings)
{
    const string MergeKey = "<<";

    readonly ImmutableArray<MapEntry>.Builder _written = ImmutableArray.CreateBuilder<MapEntry>();
    readonly Dictionary<string, ScalarNode> _keys = new(StringComparer.Ordinal);
    readonly List<MapNode> _merged = [];
    bool _merges;

    public void Add(Node key, Node value)
    {
        if (key.Meant is not ScalarNode name)
        {
            findings.Add(
                SheetChecks.WrongKind,
                Sentence.Of("sheet/wrong-kind.message.key", ("what", key.What)),
                key.Meant.Place,
                Sentence.Of("sheet/wrong-kind.help.key")
            );
        }
        else if (name.Text == MergeKey)
        {
            _merges = true;
            _written.Add(Entry(name));
            Merge(name, value.Meant);
        }
        else if (_keys.TryAdd(name.Text, name))
        {
            _written.Add(Entry(name));
        }
        else
        {
            findings.Add(
                SheetChecks.DuplicateKey,
                Sentence.Of("sheet/duplicate-key.message", ("key", Quote.Short(name.Text))),
                name.Place,
                Sentence.Of("sheet/duplicate-key.help"),
                (_keys[name.Text].Place, Sentence.Of("sheet/duplicate-key.other"))
            );
        }

        MapEntry Entry(ScalarNode name) => new(name, value.Meant) { WrittenKey = key, WrittenValue = value };
    }

    /// <summary>The entries written in the map itself, and those it means with everything merged in.</summary>
    public (ImmutableArray<MapEntry> Written, ImmutableArray<MapEntry> Meant) Whole()
    {
        var written = _written.ToImmutable();
        return (written, _merges ? Merged(written) : written);
    }

    ImmutableArray<MapEntry> Merged(ImmutableArray<MapEntry> written)
    {
        var entries = written.Where(e => e.Key.Text != MergeKey).ToList();
        foreach (var entry in _merged.SelectMany(m => m.Entries))
        {
            if (_keys.TryAdd(entry.Key.Text, entry.Key))
            {
                entries.Add(entry);
            }
        }

        return [.. entries];
    }

    void Merge(ScalarNode key, Node value)
    {
        foreach (var part in value is ListNode list ? list.Items : [value])
        {
            if (part is MapNode map)
            {
                _merged.Add(map);
            }
            else
            {
                findings.Add(
                    SheetChecks.WrongKind,
                    Sentence.Of("sheet/wrong-kind.message.merge", ("what", part.What)),
                    key.Place,
                    Sentence.Of("sheet/wrong-kind.help.merge")
                );
            }
        }
    }
}
