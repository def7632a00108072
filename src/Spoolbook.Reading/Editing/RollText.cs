using System.Collections.Immutable;
using Spoolbook.Reading.Files;
using Spoolbook.Reading.Keys;
using Spoolbook.Reading.Trees;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Editing;

/// <summary>
/// The text of a file with a roll in it, to write changes of the roll's log into. Only the characters of what
/// changes are touched: comments, blank lines, quotes and line ends stay as they are.
/// </summary>
public sealed class RollText
{
    readonly SourceFile _source;
    readonly MapNode _root;
    readonly MapNode _roll;
    readonly Place _head;
    readonly ImmutableArray<Node> _entries;

    RollText(SourceFile source, MapNode root, MapNode roll, Place head)
    {
        _source = source;
        _root = root;
        _roll = roll;
        _head = head;
        _entries = roll.WrittenEntry(RollKeys.Log.Name)?.WrittenValue is ListNode log ? log.Written : [];
    }

    /// <summary>Finds a roll in a file's text; null where the text is not the one that the roll was read from.</summary>
    public static RollText? Open(string file, string text, Place roll)
    {
        var source = new SourceFile(file, text);
        var findings = new FindingList();
        return TreeReader.Read(source, findings) is MapNode root && findings.Count == 0 && Find(root, roll) is { } found
            ? new RollText(source, root, found, roll)
            : null;
    }

    /// <summary>The keys of a take as they are written in it, in their order; empty where its map is written elsewhere.</summary>
    public ImmutableArray<WrittenKey> KeysOf(Place take) =>
        MapOf(take) is not { } map
            ? []
            :
            [
                .. from entry in map.Written
                let name = entry.WrittenName
                where name is not null
                let value = entry.WrittenValue
                select new WrittenKey(name, value is ScalarNode scalar ? scalar.Text : _source.Text[value.Start..value.End]),
            ];

    /// <summary>The text with the changes written in. It is read again, and must say what it said before but for the changes.</summary>
    public EditedText Change(IReadOnlyList<LogChange> changes)
    {
        var pen = new Pen(_source);
        if (Write(changes, pen) is { } fault)
        {
            return new EditedText(null, fault);
        }

        return pen.Text() is { } text && EditProof.Holds(_root, new SourceFile(_source.Name, text), _head, changes)
            ? new EditedText(text, null)
            : new EditedText(
                null,
                new EditFault(
                    _head,
                    "A program cannot make the change here without changing something else.",
                    "Make it by hand: look for anchors, aliases and text over several lines."
                )
            );
    }

    EditFault? Write(IReadOnlyList<LogChange> changes, Pen pen)
    {
        foreach (var change in changes.OfType<ChangedTake>())
        {
            var fault = MapOf(change.Take) is { } map ? new TakePen(pen, map).Write(change.Keys) : Repeated(change.Take);
            if (fault is not null)
            {
                return fault;
            }
        }

        var log = new LogPen(_source, _roll, _entries, InBrackets());
        foreach (var group in changes.OfType<AddedTake>().GroupBy(a => a.After))
        {
            var fault = After(group.Key) is { } after ? log.Write([.. group], after, pen) : Repeated(group.Key ?? _head);
            if (fault is not null)
            {
                return fault;
            }
        }

        return null;
    }

    static EditFault Repeated(Place entry) =>
        new(
            entry,
            "This entry of the log repeats what is written elsewhere in the file, and cannot be changed by itself.",
            "Write the entry out, or make the change by hand."
        );

    // An entry that the log repeats is in it more than once by the same place: none of them is the one.
    int? After(Place? entry)
    {
        if (entry is null)
        {
            return -1;
        }

        var found = Enumerable.Range(0, _entries.Length).Where(i => Head(_entries[i]) == entry).ToList();
        return found.Count == 1 ? found[0] : null;
    }

    // As most takes of the roll are written: between brackets, or on lines of their own.
    bool InBrackets()
    {
        var maps = _entries
            .OfType<MapNode>()
            .Where(e => e.Written is [{ WrittenName: "take" }])
            .Select(e => e.Written[0].WrittenValue)
            .OfType<MapNode>()
            .ToList();
        return maps.Count(m => m.InBrackets) * 2 >= maps.Count;
    }

    MapNode? MapOf(Place take) =>
        _entries.FirstOrDefault(e => Head(e) == take) is MapNode { Written: [{ WrittenValue: MapNode map }, ..] } ? map : null;

    static MapNode? Find(MapNode root, Place roll) =>
        Head(root) == roll ? root
        : root.WrittenEntry(FileKeys.Rolls.Name)?.WrittenValue is ListNode rolls
            ? rolls.Written.OfType<MapNode>().FirstOrDefault(r => Head(r) == roll)
        : null;

    /// <summary>The place by which records know a map: that of its first key.</summary>
    static Place? Head(Node node) => node is MapNode { Written: [var first, ..] } ? first.WrittenKey.Place : null;
}
