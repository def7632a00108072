using System.Collections.Immutable;
using Spoolbook.Reading.Files;
using Spoolbook.Reading.Keys;
using Spoolbook.Reading.Trees;
using YamlDotNet.Core;

namespace Spoolbook.Reading.Editing;

/// <summary>Adds, changes and takes out entries of a log, in the style of the entries already in it.</summary>
sealed class LogPen
{
    const string Deeper = "  ";
    const string Full = "full";

    readonly Pen _pen;
    readonly SourceFile _source;
    readonly MapNode _roll;
    readonly MapEntry? _log;
    readonly ImmutableArray<Node> _entries;

    public LogPen(Pen pen, MapNode roll)
    {
        (_pen, _source, _roll) = (pen, pen.Source, roll);
        _log = roll.WrittenEntry(RollKeys.Log.Name);
        _entries = _log?.WrittenValue is ListNode list ? list.Written : [];
    }

    /// <param name="after">The entry they follow; -1 for the beginning of the log.</param>
    /// <param name="isLast">Whether they go behind the comments that close the log.</param>
    public EditFault? Add(IReadOnlyList<AddedEntry> added, int after, bool isLast)
    {
        switch (_log?.WrittenValue)
        {
            case ListNode { InBrackets: true } list:
                PutInBrackets(list, after, string.Join(", ", added.Select(e => $"{{{e.Word}: {OnOneLine(e)}}}")));
                return null;
            case ListNode { Written.Length: > 0 }:
                return PutOnLines(after, added, isLast);
            case null when !_roll.InBrackets:
                PutLog(added);
                return null;
            case ScalarNode { IsBlank: true } nothing when !_roll.InBrackets:
                var last = isLast ? _pen.PastComments(_log.WrittenKey.End, ColumnOf(_log)) : _log.WrittenKey.End;
                _pen.Put(nothing.Start, nothing.End, "");
                _pen.PutLineAfter(last, Lines(Indent(_log.Start) + Deeper + "- ", added));
                return null;
            default:
                return new EditFault(
                    _source.At(_roll.Start, _roll.Start + 1),
                    "The roll has no list of what happened to it that an entry could be put in.",
                    "Write `log:` in the roll, and each entry on a line of its own after `- `."
                );
        }
    }

    public EditFault? Change(MapEntry entry, ImmutableArray<KeyValue> keys)
    {
        var kind = KindOf(entry.Key.Text);
        switch (entry.WrittenValue)
        {
            case MapNode map:
                return new MapPen(_pen, map, kind.Table).Write(keys);
            case ScalarNode { Style: ScalarStyle.Literal or ScalarStyle.Folded } block
                when FileComments.Between(_source, block.Start, block.End, block).Count > 0:
                return MapPen.Commented(_pen, entry);
            case ScalarNode words when kind.Short != EntryShort.None:
                var note = kind.Short == EntryShort.Words && !words.IsBlank ? [new KeyValue(EntryKeys.Note.Name, words.Text)] : Nothing;
                ImmutableArray<KeyValue> all = [.. note.Where(n => keys.All(k => k.Key != n.Key)), .. keys.Where(k => !k.Values.IsEmpty)];
                if (Words(kind, all) is { } alone)
                {
                    _pen.PutValue(words, alone.Values);
                }
                else
                {
                    _pen.PutValue(words, MapPen.InBrackets(all, kind.Table));
                }

                return null;
            default:
                return new EditFault(entry.Key.Place, $"The {kind.Word} has no keys that could be changed.", "Change it by hand.");
        }
    }

    /// <param name="gone">Which entries, in order.</param>
    public EditFault? Remove(ImmutableArray<int> gone)
    {
        if (_log?.WrittenValue is ListNode { InBrackets: true } list)
        {
            foreach (var i in gone)
            {
                var from = i > 0 ? _entries[i - 1].End : list.Start;
                var to = i + 1 < _entries.Length ? _entries[i + 1].Start : list.End;
                if (FileComments.Between(_source, from, to, list).Count > 0)
                {
                    return new EditFault(
                        _entries[i].Place,
                        "This cannot be taken out without the comment beside it.",
                        "Take it out by hand, and do the rest again."
                    );
                }
            }

            BracketItems.TakeOut(_pen, [.. _entries.Select(e => (e.Start, e.End))], gone.Contains);
            return null;
        }

        foreach (var i in gone)
        {
            var start = LineOf(i);
            var end = _pen.EndOfLine(_entries[i].End);
            var indent = _source.Text[start..].AsSpan().IndexOf('-');
            var comments = FileComments.Between(_source, start, end, _entries[i]);
            _pen.Put(start, _pen.NextLine(end), string.Concat(comments.Select(c => new string(' ', indent) + c + _pen.LineEnd)));
        }

        return null;
    }

    static ImmutableArray<KeyValue> Nothing => [];

    static EntryKind KindOf(string word) => LogKeys.Kinds.First(k => k.Word == word);

    /// <summary>The note of an entry that is nothing but a note; null for any other.</summary>
    static KeyValue? Words(EntryKind kind, ImmutableArray<KeyValue> keys) =>
        kind.Short == EntryShort.Words && keys is [{ Values.Length: 1 } only] && only.Key == EntryKeys.Note.Name ? only : null;

    string OnOneLine(AddedEntry added)
    {
        var kind = KindOf(added.Word);
        return Words(kind, added.Keys) is { } words ? YamlQuoting.Quote(words.Values)
            : kind.Short == EntryShort.Full && added.Keys.All(k => k.Values.IsEmpty) ? BareWord(kind)
            : MapPen.InBrackets(added.Keys, kind.Table);
    }

    // Copies the style of the last entry that is nothing but its word.
    string BareWord(EntryKind kind)
    {
        var last = _entries
            .OfType<MapNode>()
            .Where(e => e.Written is [{ WrittenName: { } name }] && name == kind.Word)
            .Select(e => e.Written[0].WrittenValue)
            .LastOrDefault(v => v is ScalarNode { IsBlank: false } or MapNode { Written.IsEmpty: true });
        return last is MapNode ? "{}" : Full;
    }

    void PutInBrackets(ListNode list, int after, string items)
    {
        var (at, text) =
            list.Written.IsEmpty ? (list.Start + 1, items)
            : after < 0 ? (list.Written[0].Start, items + ", ")
            : (list.Written[after].End, ", " + items);
        _pen.Put(at, at, text);
    }

    EditFault? PutOnLines(int after, IReadOnlyList<AddedEntry> added, bool isLast)
    {
        var beside = _entries[Math.Max(after, 0)];
        var start = _pen.StartOfLine(beside.Start);
        var opening = _source.Text[start..beside.Start];
        if (opening.Trim(' ') != "-")
        {
            return new EditFault(
                _source.At(beside.Start, beside.End),
                "An entry would have to be put beside this one, which does not begin its line.",
                "Begin each entry of the log on a line of its own with `- `."
            );
        }

        if (after < 0)
        {
            _pen.Put(start, start, Lines(opening, added) + _pen.LineEnd);
        }
        else
        {
            _pen.PutLineAfter(isLast ? _pen.PastComments(beside.End, ColumnOf(_log!)) : beside.End, Lines(opening, added));
        }

        return null;
    }

    void PutLog(IReadOnlyList<AddedEntry> added)
    {
        var before = _roll.WrittenEntry(RollKeys.Load.Name) ?? _roll.Written[^1];
        var indent = Indent(_roll.Written[0].Start);
        _pen.PutLineAfter(before.End, $"{indent}{RollKeys.Log.Name}:{_pen.LineEnd}{Lines(indent + Deeper + "- ", added)}");
    }

    string Lines(string opening, IReadOnlyList<AddedEntry> added) => string.Join(_pen.LineEnd, added.Select(e => Line(opening, e)));

    string Line(string opening, AddedEntry added)
    {
        if (added.Word != LogKeys.Take.Word || TakesAreInBrackets())
        {
            return $"{opening}{added.Word}: {OnOneLine(added)}";
        }

        var indent = new string(' ', opening.Length) + Deeper;
        var keys = string.Concat(MapPen.Ordered(added.Keys, TakeKeys.Table).Select(k => _pen.LineEnd + indent + MapPen.Line(k)));
        return $"{opening}{added.Word}:{keys}";
    }

    // Follows most takes of the roll: between brackets, or on lines of their own.
    bool TakesAreInBrackets()
    {
        var maps = _entries
            .OfType<MapNode>()
            .Where(e => e.Written is [{ WrittenName: "take" }])
            .Select(e => e.Written[0].WrittenValue)
            .OfType<MapNode>()
            .ToList();
        return maps.Count(m => m.InBrackets) * 2 >= maps.Count;
    }

    // An entry begins on the line of its hyphen; an anchor can be between the hyphen and the word.
    int LineOf(int entry)
    {
        var line = _source.At(_entries[entry].Start, _entries[entry].Start).Line;
        var first = _source.At(_log!.WrittenKey.End, _log.WrittenKey.End).Line;
        while (line > first + 1 && !_source.Line(line).AsSpan().TrimStart(' ').StartsWith('-'))
        {
            line--;
        }

        return _source.StartOf(line);
    }

    int ColumnOf(MapEntry entry) => _source.At(entry.Start, entry.Start).Column;

    string Indent(int at) => new(' ', _source.At(at, at).Column - 1);
}
