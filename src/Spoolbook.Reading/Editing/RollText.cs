using System.Collections.Immutable;
using Spoolbook.Reading.Files;
using Spoolbook.Reading.Keys;
using Spoolbook.Reading.Trees;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Editing;

/// <summary>
/// The text of a file with a roll in it, ready for changes of the roll. Only the characters of what changes are touched:
/// comments, blank lines, quotes and line ends stay as they are.
/// </summary>
public sealed class RollText
{
    const string Deeper = "  ";

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

    /// <summary>Finds a roll in a file's text; null where the roll is not there or the text cannot be read.</summary>
    public static RollText? Open(string file, string text, Place roll)
    {
        var source = new SourceFile(file, text);
        var findings = new FindingList();
        return TreeReader.Read(source, findings) is MapNode root && findings.Count == 0 && Find(root, roll) is { } found
            ? new RollText(source, root, found, roll)
            : null;
    }

    /// <summary>The keys of an entry as the file has them, in its order; empty where an alias stands in for its map.</summary>
    public ImmutableArray<WrittenKey> KeysOf(Place entry) => WrittenIn(EntryAt(entry)?.WrittenValue as MapNode);

    /// <summary>The keys of a part of the roll as the file has them, in its order.</summary>
    public ImmutableArray<WrittenKey> KeysOf(RollPart part) => WrittenIn(part == RollPart.Roll ? _roll : Part(part) as MapNode);

    /// <summary>The changed text. It is read again, and must say the same as before except for the changes.</summary>
    public EditedText Change(IReadOnlyList<RollChange> changes)
    {
        var pen = new Pen(_source);
        if (Write(changes, pen) is { } fault)
        {
            return new EditedText(null, fault);
        }

        return pen.Text() is { } text && EditProof.Holds(_root, new SourceFile(_source.Name, text), _head, changes)
            ? new EditedText(text, null)
            : new EditedText(null, Impossible(_head));
    }

    /// <summary>The fault of a change that would change something else too.</summary>
    internal static EditFault Impossible(Place at) =>
        new(
            at,
            "A program cannot make the change here without changing something else.",
            "Make it by hand: look for anchors, aliases and text over several lines."
        );

    EditFault? Write(IReadOnlyList<RollChange> changes, Pen pen)
    {
        var log = new LogPen(pen, _roll);
        return changes.OfType<ChangedEntry>().Select(c => Change(c, log)).FirstOrDefault(f => f is not null)
            ?? Remove([.. changes.OfType<RemovedEntry>()], log)
            ?? changes
                .OfType<AddedEntry>()
                .GroupBy(a => (a.After, a.IsLast))
                .Select(g => Add([.. g], log))
                .FirstOrDefault(f => f is not null)
            ?? changes.OfType<ChangedPart>().Select(c => Change(c, pen)).FirstOrDefault(f => f is not null)
            ?? (
                changes.OfType<RemovedUnload>().Any()
                    ? new MapPen(pen, _roll, FileKeys.Roll).Write([
                        KeyValue.Without(RollKeys.Unload.Name),
                        KeyValue.Without(RollKeys.Totals.Name),
                    ])
                    : null
            );
    }

    EditFault? Change(ChangedEntry change, LogPen log) =>
        EntryAt(change.Entry) is { WrittenValue: not AliasNode } entry ? log.Change(entry, change.Keys) : Repeated(change.Entry);

    EditFault? Remove(ImmutableArray<RemovedEntry> removed, LogPen log)
    {
        if (removed.IsEmpty)
        {
            return null;
        }

        var gone = removed.Select(r => At(r.Entry)).ToList();
        return gone.IndexOf(null) is >= 0 and var lost
            ? Repeated(removed[lost].Entry)
            : log.Remove([.. gone.Select(g => g!.Value).Order()]);
    }

    EditFault? Add(ImmutableArray<AddedEntry> added, LogPen log)
    {
        var (entry, isLast) = (added[0].After, added[0].IsLast);
        var after =
            isLast ? (int?)(_entries.Length - 1)
            : entry is { } named ? At(named)
            : -1;
        return after is { } at ? log.Add(added, at, isLast) : Repeated(entry ?? _head);
    }

    EditFault? Change(ChangedPart change, Pen pen)
    {
        var table = TableOf(change.Part);
        switch (change.Part == RollPart.Roll ? _roll : Part(change.Part))
        {
            case MapNode map:
                return new MapPen(pen, map, table).Write(change.Keys);
            case ScalarNode { IsBlank: true } nothing:
                pen.PutValue(nothing, MapPen.InBrackets(change.Keys, table));
                return null;
            case null:
                new MapPen(pen, _roll, FileKeys.Roll).Add(NameOf(change.Part), NameOf(change.Part) + ":" + New(change, table, pen));
                return null;
            default:
                return Repeated(_head);
        }
    }

    // Follows the roll's loading: between brackets, or on lines of its own.
    string New(ChangedPart change, KeyTable table, Pen pen)
    {
        if (_roll.InBrackets || Part(RollPart.Load) is not MapNode { InBrackets: false })
        {
            return " " + MapPen.InBrackets(change.Keys, table);
        }

        var indent = new string(' ', _source.At(_roll.Written[0].Start, _roll.Written[0].Start).Column - 1) + Deeper;
        return string.Concat(MapPen.Ordered(change.Keys, table).Select(k => pen.LineEnd + indent + MapPen.Line(k)));
    }

    Node? Part(RollPart part) => _roll.WrittenEntry(NameOf(part))?.WrittenValue;

    internal static string NameOf(RollPart part) =>
        part switch
        {
            RollPart.Load => RollKeys.Load.Name,
            RollPart.Totals => RollKeys.Totals.Name,
            _ => RollKeys.Unload.Name,
        };

    static KeyTable TableOf(RollPart part) =>
        part switch
        {
            RollPart.Roll => FileKeys.Roll,
            RollPart.Load => LoadKeys.Table,
            RollPart.Totals => TotalsKeys.Table,
            _ => UnloadKeys.Table,
        };

    static EditFault Repeated(Place entry) =>
        new(
            entry,
            "This entry of the log repeats what is written elsewhere in the file, and cannot be changed by itself.",
            "Write the entry out, or make the change by hand."
        );

    // An alias gives the log the same entry twice, at one place: then neither of them is the one to change.
    int? At(Place entry)
    {
        var found = Enumerable.Range(0, _entries.Length).Where(i => Head(_entries[i]) == entry).ToList();
        return found.Count == 1 ? found[0] : null;
    }

    MapEntry? EntryAt(Place entry) => _entries.FirstOrDefault(e => Head(e) == entry) is MapNode { Written: [var first, ..] } ? first : null;

    ImmutableArray<WrittenKey> WrittenIn(MapNode? map) =>
        map is null
            ? []
            :
            [
                .. from entry in map.Written
                let name = entry.WrittenName
                where name is not null
                let value = entry.WrittenValue
                select new WrittenKey(name, value is ScalarNode scalar ? scalar.Text : _source.Text[value.Start..value.End]),
            ];

    static MapNode? Find(MapNode root, Place roll) =>
        Head(root) == roll ? root
        : root.WrittenEntry(FileKeys.Rolls.Name)?.WrittenValue is ListNode rolls
            ? rolls.Written.OfType<MapNode>().FirstOrDefault(r => Head(r) == roll)
        : null;

    /// <summary>The place by which records know a map: its first key.</summary>
    static Place? Head(Node node) => node is MapNode { Written: [var first, ..] } ? first.WrittenKey.Place : null;
}
