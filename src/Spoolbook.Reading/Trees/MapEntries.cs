using System.Collections.Immutable;

namespace Spoolbook.Reading.Trees;

/// <summary>The entries of one map as they come in: keys once, and what <c>&lt;&lt;</c> merges in behind those that are written.</summary>
sealed class MapEntries(FindingList findings)
{
    const string MergeKey = "<<";

    readonly List<MapEntry> _entries = [];
    readonly Dictionary<string, ScalarNode> _keys = new(StringComparer.Ordinal);
    readonly List<MapNode> _merged = [];

    public void Add(Node key, Node value)
    {
        if (key is not ScalarNode name)
        {
            findings.Add(SheetChecks.WrongKind, $"A key must be a word, and here is {key.What}.", key.Place, "Write `key: value`, with the key a single word.");
        }
        else if (name.Text == MergeKey)
        {
            Merge(name, value);
        }
        else if (_keys.TryAdd(name.Text, name))
        {
            _entries.Add(new MapEntry(name, value));
        }
        else
        {
            findings.Add(SheetChecks.DuplicateKey, $"`{Quote.Short(name.Text)}` is written twice here, and only the first is read.", name.Place, "Keep one of the two.", (_keys[name.Text].Place, "first written here"));
        }
    }

    public ImmutableArray<MapEntry> Merged()
    {
        foreach (var entry in _merged.SelectMany(m => m.Entries))
        {
            if (_keys.TryAdd(entry.Key.Text, entry.Key))
            {
                _entries.Add(entry);
            }
        }

        return [.. _entries];
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
                findings.Add(SheetChecks.WrongKind, $"After `<<` a map is repeated, and here is {part.What}.", key.Place, "Write `<<: *name`, where `&name` stands before a map.");
            }
        }
    }
}
