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
    readonly MapPiece _roll;
    readonly ImmutableArray<Piece> _entries;

    RollText(SourceFile source, MapPiece roll)
    {
        _source = source;
        _roll = roll;
        _entries = (Log as ListPiece)?.Items ?? [];
    }

    Piece? Log => _roll.Entry(RollKeys.Log.Name)?.Value;

    /// <summary>Finds a roll in a file's text; null where the text is not the one that the roll was read from.</summary>
    public static RollText? Open(string file, string text, Place roll)
    {
        var source = new SourceFile(file, text);
        var findings = new FindingList();
        if (TreeReader.Read(source, findings) is null || findings.Count > 0)
        {
            return null;
        }

        return PieceReader.Read(text) is MapPiece root && Find(source, root, roll) is { } found ? new RollText(source, found) : null;
    }

    /// <summary>The keys of a take as they are written in it, in their order; empty where its map is written elsewhere.</summary>
    public ImmutableArray<WrittenKey> KeysOf(Place take) => MapOf(take) is not { } map ? [] :
    [
        .. from entry in map.Entries
           where entry.Name is not null
           select new WrittenKey(entry.Name!, entry.Value is ScalarPiece scalar ? scalar.Text : _source.Text[entry.Value.Start..entry.Value.End]),
    ];

    /// <summary>The text with the changes written in. It is read again, and must say what it said before but for the changes.</summary>
    public EditedText Change(IReadOnlyList<LogChange> changes)
    {
        var pen = new Pen(_source);
        var head = Head(_source, _roll)!.Value;
        if (Write(changes, pen) is { } fault)
        {
            return new EditedText(null, fault);
        }

        return pen.Text() is { } text && EditProof.Holds(_source, text, head, changes)
            ? new EditedText(text, null)
            : new EditedText(null, new EditFault(head, "A program cannot make the change here without changing something else.", "Make it by hand: look for anchors, aliases and text over several lines."));
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
            var fault = After(group.Key) is { } after ? log.Write([.. group], after, pen) : Repeated(group.Key!.Value);
            if (fault is not null)
            {
                return fault;
            }
        }

        return null;
    }

    static EditFault Repeated(Place entry) => new(entry, "This entry of the log repeats what is written elsewhere in the file, and cannot be changed by itself.", "Write the entry out, or make the change by hand.");

    // An entry that the log repeats is in it more than once by the same place: none of them is the one.
    int? After(Place? entry)
    {
        if (entry is null)
        {
            return -1;
        }

        var found = Enumerable.Range(0, _entries.Length).Where(i => Head(_source, _entries[i]) == entry).ToList();
        return found.Count == 1 ? found[0] : null;
    }

    // As most takes of the roll are written: between brackets, or on lines of their own.
    bool InBrackets()
    {
        var maps = _entries.OfType<MapPiece>().Where(e => e.Entries is [{ Name: "take", Value: MapPiece }]).Select(e => (MapPiece)e.Entries[0].Value).ToList();
        return maps.Count(m => m.InBrackets) * 2 >= maps.Count;
    }

    MapPiece? MapOf(Place take) => _entries.FirstOrDefault(e => Head(_source, e) == take) is MapPiece { Entries: [{ Value: MapPiece map }, ..] } ? map : null;

    static MapPiece? Find(SourceFile source, MapPiece root, Place roll) =>
        Head(source, root) == roll ? root
        : root.Entry(FileKeys.Rolls.Name)?.Value is ListPiece rolls ? rolls.Items.OfType<MapPiece>().FirstOrDefault(r => Head(source, r) == roll)
        : null;

    /// <summary>The place by which records know a map: that of its first key.</summary>
    internal static Place? Head(SourceFile source, Piece piece) =>
        piece is MapPiece { Entries: [var first, ..] } ? source.At(first.Key.Start, first.Key.End) : null;
}
