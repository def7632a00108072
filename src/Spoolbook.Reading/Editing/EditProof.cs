using System.Globalization;
using System.Text;
using Spoolbook.Reading.Files;
using Spoolbook.Reading.Trees;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Editing;

/// <summary>
/// Holds a changed text against the one before, as the reader reads them: every key and value must be the same,
/// but for the changes that were asked for.
/// </summary>
sealed class EditProof
{
    readonly Place _roll;
    readonly Dictionary<Place, ChangedTake> _changed = [];
    readonly List<AddedTake> _added = [];
    int _toMeet;

    EditProof(Place roll, IReadOnlyList<LogChange> changes)
    {
        _roll = roll;
        _added.AddRange(changes.OfType<AddedTake>());
        foreach (var change in changes.OfType<ChangedTake>())
        {
            _changed.Add(change.Take, change);
        }

        _toMeet = _changed.Count + _added.Count;
    }

    public static bool Holds(Node before, SourceFile after, Place roll, IReadOnlyList<LogChange> changes)
    {
        var proof = new EditProof(roll, changes);
        var expected = proof.Said(before);
        var findings = new FindingList();
        return proof._toMeet == 0
            && TreeReader.Read(after, findings) is { } root
            && findings.Count == 0
            && expected == new EditProof(default, []).Said(root);
    }

    string Said(Node root)
    {
        var said = new StringBuilder();
        Tell(root, said);
        return said.ToString();
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
            case MapNode map:
                TellMap(map, said);
                break;
        }
    }

    // In the order of the keys' names: the order in which they are written says nothing.
    void TellMap(MapNode map, StringBuilder said)
    {
        var isRoll = map.Entries is [var first, ..] && first.Key.Place == _roll;
        var entries = map.Entries.ToDictionary(e => e.Key.Text, e => Report(e, isRoll), StringComparer.Ordinal);
        if (isRoll && _added.Count > 0 && !entries.ContainsKey(Keys.RollKeys.Log.Name))
        {
            entries[Keys.RollKeys.Log.Name] = Log(null);
        }

        TellEntries(entries, said);
    }

    string Report(MapEntry entry, bool ofRoll)
    {
        var said = new StringBuilder();
        if (ofRoll && entry.Key.Text == Keys.RollKeys.Log.Name && _added.Count > 0)
        {
            return Log(entry.Value);
        }

        if (entry.Value is MapNode map && _changed.TryGetValue(entry.Key.Place, out var change))
        {
            _toMeet--;
            TellTake(map, change, said);
        }
        else
        {
            Tell(entry.Value, said);
        }

        return said.ToString();
    }

    string Log(Node? log)
    {
        var said = new StringBuilder("[");
        TellAdded(null, said);
        foreach (var item in log is ListNode list ? list.Items : [])
        {
            Tell(item, said);
            if (item is MapNode { Entries: [var first, ..] })
            {
                TellAdded(first.Key.Place, said);
            }
        }

        return said.Append(']').ToString();
    }

    void TellAdded(Place? after, StringBuilder said)
    {
        foreach (var take in _added.Where(a => a.After == after))
        {
            _toMeet--;
            var keys = new StringBuilder();
            TellEntries(take.Keys.Where(k => !k.Values.IsEmpty).ToDictionary(k => k.Key, Written, StringComparer.Ordinal), keys);
            TellEntries(new() { [Keys.LogKeys.Take.Word] = keys.ToString() }, said);
        }
    }

    void TellTake(MapNode map, ChangedTake change, StringBuilder said)
    {
        var entries = map.Entries.ToDictionary(e => e.Key.Text, e => Report(e, false), StringComparer.Ordinal);
        foreach (var key in change.Keys)
        {
            if (key.Values.IsEmpty)
            {
                entries.Remove(key.Key);
            }
            else
            {
                entries[key.Key] = Written(key);
            }
        }

        TellEntries(entries, said);
    }

    static string Written(KeyValue key)
    {
        var said = new StringBuilder();
        said.Append(key.Values.Length > 1 ? "[" : "");
        key.Values.ToList().ForEach(v => TellWords(v, said));
        return said.Append(key.Values.Length > 1 ? "]" : "").ToString();
    }

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

    // With its length before it, so that no text can pass for the end of another.
    static void TellWords(string? words, StringBuilder said) =>
        said.Append(words is null ? "~" : string.Create(CultureInfo.InvariantCulture, $"{words.Length}:{words}"));
}
