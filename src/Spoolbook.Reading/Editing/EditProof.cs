using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Spoolbook.Reading.Files;
using Spoolbook.Reading.Keys;
using Spoolbook.Reading.Trees;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Editing;

/// <summary>
/// Compares a changed text with the one before, as the reader reads them: every key and value must be the same, except for
/// the changes asked for. A short entry equals the same entry written out.
/// </summary>
sealed class EditProof
{
    const string Nothing = "~";

    readonly Place? _roll;
    readonly NewRoll? _newRoll;
    readonly Dictionary<Place, ChangedEntry> _changed = [];
    readonly HashSet<Place> _removed = [];
    readonly List<AddedEntry> _added = [];
    readonly List<ChangedPart> _parts = [];
    readonly bool _takesUnloadOut;
    int _toMeet;

    EditProof(Place? roll, IReadOnlyList<RollChange> changes, NewRoll? newRoll = null)
    {
        (_roll, _newRoll) = (roll, newRoll);
        _added.AddRange(changes.OfType<AddedEntry>());
        _parts.AddRange(changes.OfType<ChangedPart>());
        _removed.UnionWith(changes.OfType<RemovedEntry>().Select(r => r.Entry));
        _takesUnloadOut = changes.OfType<RemovedUnload>().Any();
        foreach (var change in changes.OfType<ChangedEntry>())
        {
            _changed.Add(change.Entry, change);
        }

        _toMeet = _changed.Count + _removed.Count + _added.Count + _parts.Count + (newRoll is null ? 0 : 1);
    }

    /// <summary>Whether only the asked-for changes of a roll make the two texts differ.</summary>
    public static bool Holds(Node before, SourceFile after, Place roll, IReadOnlyList<RollChange> changes) =>
        new EditProof(roll, changes).Holds(before, after);

    /// <summary>Whether the two texts differ only by one more roll at the end of the list.</summary>
    public static bool Holds(Node before, SourceFile after, NewRoll roll) => new EditProof(null, [], roll).Holds(before, after);

    bool Holds(Node before, SourceFile after)
    {
        var expected = Whole(before);
        var findings = new FindingList();
        return _toMeet == 0
            && TreeReader.Read(after, findings) is { } root
            && findings.Count == 0
            && expected == new EditProof(_roll, []).Whole(root);
    }

    string Whole(Node root)
    {
        if (_newRoll is not { } roll || root is not MapNode map)
        {
            return Said(root);
        }

        var entries = Entries(map);
        var rolls = map.Entry(FileKeys.Rolls.Name)?.Value as ListNode;
        var added = Said(roll, rolls is { InBrackets: true, Items.Length: > 0 });
        entries[FileKeys.Rolls.Name] = $"[{string.Concat(rolls?.Items.Select(Said) ?? [])}{added}]";
        _toMeet--;
        return Said(entries);
    }

    string Said(Node node)
    {
        var said = new StringBuilder();
        Tell(node, said);
        return said.ToString();
    }

    static string Said(NewRoll roll, bool inBrackets)
    {
        var entries = With([], roll.Keys);
        entries[RollKeys.Load.Name] = Said(With([], roll.Load));
        entries[RollKeys.Log.Name] = inBrackets ? "[]" : Nothing;
        return Said(entries);
    }

    void Tell(Node node, StringBuilder said)
    {
        switch (node)
        {
            case ScalarNode scalar:
                TellWords(scalar.IsBlank ? null : scalar.Text, said);
                break;
            case ListNode list:
                said.Append('[');
                list.Items.ToList().ForEach(i => Tell(i, said));
                said.Append(']');
                break;
            case MapNode map when _roll is { } roll && map.Entries is [var first, ..] && first.Key.Place == roll:
                TellEntries(Roll(map), said);
                break;
            case MapNode map:
                TellEntries(Entries(map), said);
                break;
        }
    }

    Dictionary<string, string> Roll(MapNode map)
    {
        var log = map.Entry(RollKeys.Log.Name);
        var entries = map.Entries.Where(e => e != log).ToDictionary(e => e.Key.Text, e => Said(e.Value), StringComparer.Ordinal);
        entries[RollKeys.Log.Name] = Log(log?.Value);
        foreach (var (part, keys) in _parts)
        {
            _toMeet--;
            if (part == RollPart.Roll)
            {
                entries = With(entries, keys);
            }
            else
            {
                var name = RollText.NameOf(part);
                entries[name] = Said(With(map.Entry(name)?.Value is MapNode written ? Entries(written) : [], keys));
            }
        }

        if (_takesUnloadOut)
        {
            entries.Remove(RollKeys.Unload.Name);
            entries.Remove(RollKeys.Totals.Name);
        }

        return entries;
    }

    string Log(Node? log)
    {
        if (log is not (null or ListNode or ScalarNode { IsBlank: true }))
        {
            return Said(log);
        }

        var said = new StringBuilder("[");
        TellAdded(a => a.After is null && !a.IsLast, said);
        foreach (var item in log is ListNode list ? list.Items : [])
        {
            var place = item is MapNode { Entries: [var first, ..] } ? first.Key.Place : (Place?)null;
            if (place is { } at && _removed.Contains(at))
            {
                _toMeet--;
            }
            else
            {
                TellEntry(item, said);
            }

            TellAdded(a => a.After == place && place is not null, said);
        }

        TellAdded(a => a.IsLast, said);
        return said.Append(']').ToString();
    }

    void TellEntry(Node item, StringBuilder said)
    {
        if (item is not MapNode { Entries: [var first, ..] } map || Keys(first) is not { } keys)
        {
            Tell(item, said);
            return;
        }

        if (_changed.TryGetValue(first.Key.Place, out var change))
        {
            _toMeet--;
            keys = With(keys, change.Keys);
        }

        var entries = Entries(map);
        entries[first.Key.Text] = Said(keys);
        TellEntries(entries, said);
    }

    /// <summary>The keys of an entry, short or written out; null where it has none.</summary>
    Dictionary<string, string>? Keys(MapEntry entry)
    {
        var kind = LogKeys.Kinds.FirstOrDefault(k => k.Word == entry.Key.Text);
        return (kind?.Short, entry.Value) switch
        {
            (null, _) => null,
            (_, MapNode map) => Entries(map),
            (EntryShort.Words, ScalarNode { IsBlank: false } words) => With([], [new KeyValue(EntryKeys.Note.Name, words.Text)]),
            (EntryShort.Words or EntryShort.Full, ScalarNode { IsBlank: true }) or (EntryShort.Full, ScalarNode { Text: "full" }) => [],
            _ => null,
        };
    }

    void TellAdded(Func<AddedEntry, bool> isHere, StringBuilder said)
    {
        foreach (var added in _added.Where(isHere))
        {
            _toMeet--;
            TellEntries(new() { [added.Word] = Said(With([], added.Keys)) }, said);
        }
    }

    Dictionary<string, string> Entries(MapNode map) =>
        map.Entries.ToDictionary(e => e.Key.Text, e => Said(e.Value), StringComparer.Ordinal);

    static Dictionary<string, string> With(Dictionary<string, string> entries, ImmutableArray<KeyValue> keys)
    {
        var with = new Dictionary<string, string>(entries, StringComparer.Ordinal);
        foreach (var key in keys)
        {
            if (key.Values.IsEmpty)
            {
                with.Remove(key.Key);
            }
            else
            {
                with[key.Key] = Written(key);
            }
        }

        return with;
    }

    static string Written(KeyValue key)
    {
        var said = new StringBuilder();
        said.Append(key.Values.Length > 1 ? "[" : "");
        key.Values.ToList().ForEach(v => TellWords(v, said));
        return said.Append(key.Values.Length > 1 ? "]" : "").ToString();
    }

    static string Said(Dictionary<string, string> entries)
    {
        var said = new StringBuilder();
        TellEntries(entries, said);
        return said.ToString();
    }

    // Sorted by name: the order of keys in a file means nothing.
    static void TellEntries(Dictionary<string, string> entries, StringBuilder said)
    {
        said.Append('{');
        foreach (var (key, value) in entries.OrderBy(e => e.Key, StringComparer.Ordinal))
        {
            TellWords(key, said);
            said.Append(value);
        }

        said.Append('}');
    }

    // The length goes first, so that no text can pass for the end of another.
    static void TellWords(string? words, StringBuilder said) =>
        said.Append(words is null ? Nothing : string.Create(CultureInfo.InvariantCulture, $"{words.Length}:{words}"));
}
