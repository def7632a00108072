using System.Collections.Immutable;
using Spoolbook.Reading.Keys;
using Spoolbook.Reading.Trees;

namespace Spoolbook.Reading.Editing;

/// <summary>Changes keys in one map.</summary>
/// <param name="table">The keys it can have, in the order they are written in.</param>
sealed class MapPen(Pen pen, MapNode map, KeyTable table)
{
    /// <summary>The keys with a value, in the order of a table.</summary>
    public static IEnumerable<KeyValue> Ordered(ImmutableArray<KeyValue> keys, KeyTable table) =>
        keys.Where(k => !k.Values.IsEmpty).OrderBy(k => OrderOf(k.Key, table));

    /// <summary>The keys with a value as a map in brackets, in the order of a table.</summary>
    public static string InBrackets(ImmutableArray<KeyValue> keys, KeyTable table) =>
        "{" + string.Join(", ", Ordered(keys, table).Select(Line)) + "}";

    public static string Line(KeyValue key) => $"{key.Key}: {YamlQuoting.Quote(key.Values)}";

    public EditFault? Write(ImmutableArray<KeyValue> keys)
    {
        var gone = keys.Where(k => k.Values.IsEmpty && map.WrittenEntry(k.Key) is not null).Select(k => k.Key).ToHashSet();
        var added = new List<KeyValue>();
        foreach (var key in Ordered(keys, table))
        {
            if (map.WrittenEntry(key.Key) is { } entry)
            {
                pen.PutValue(entry.WrittenValue, key.Values);
            }
            else
            {
                added.Add(key);
            }
        }

        if (gone.Count > 0 && TakeOut(IsGone, gone.Count < map.Written.Length || added.Count > 0) is { } fault)
        {
            return fault;
        }

        Add([.. added.Select(k => (k.Key, Line(k)))], IsGone, pastComments: false);
        return null;

        bool IsGone(MapEntry entry) => entry.WrittenName is { } name && gone.Contains(name);
    }

    /// <param name="line">Key and value, ready to write; several lines where the map is on lines of its own.</param>
    public void Add(string key, string line) => Add([(key, line)], _ => false, pastComments: true);

    static int OrderOf(string key, KeyTable table) =>
        table.Keys.Select(k => k.Name).ToList().IndexOf(key) is >= 0 and var at ? at : int.MaxValue;

    void Add(ImmutableArray<(string Key, string Line)> lines, Func<MapEntry, bool> isGone, bool pastComments)
    {
        var kept = map.Written.Where(e => !isGone(e)).ToList();
        if (lines.IsEmpty)
        {
            return;
        }

        if (kept.Count == 0)
        {
            var at = map.Written.IsEmpty ? map.Start + 1 : map.Written[0].Start;
            pen.Put(at, at, string.Join(map.InBrackets ? ", " : pen.LineEnd + Indent(at), lines.Select(l => l.Line)));
            return;
        }

        foreach (var (key, line) in lines)
        {
            var before = kept.LastOrDefault(e => e.WrittenName is { } name && OrderOf(name, table) < OrderOf(key, table));
            if (map.InBrackets)
            {
                var at = before?.End ?? kept[0].Start;
                pen.Put(at, at, before is null ? line + ", " : ", " + line);
            }
            else if (before is null)
            {
                var first = kept[0].Start;
                pen.Put(first, first, line + pen.LineEnd + Indent(first));
            }
            else
            {
                var column = pen.Source.At(before.Start, before.Start).Column;
                pen.PutLineAfter(pastComments ? pen.PastComments(before.End, column) : before.End, Indent(before.Start) + line);
            }
        }
    }

    EditFault? TakeOut(Func<MapEntry, bool> isGone, bool hasOthers)
    {
        foreach (var entry in map.Written.Where(isGone))
        {
            var (from, to) = (entry.Start, map.InBrackets ? entry.End : pen.EndOfLine(entry.End));
            var i = map.Written.IndexOf(entry);
            from = map.InBrackets && i > 0 ? map.Written[i - 1].End : from;
            to = map.InBrackets && i == 0 && map.Written.Length > 1 ? map.Written[1].Start : to;
            if (FileComments.Between(pen.Source, from, to, map).Count > 0)
            {
                return Commented(pen, entry);
            }
        }

        if (map.InBrackets)
        {
            BracketItems.TakeOut(pen, [.. map.Written.Select(e => (e.Start, e.End))], i => isGone(map.Written[i]));
            return null;
        }

        return TakeOutLines(isGone, hasOthers);
    }

    // The first key can share its line with the item's hyphen; every other key goes with its whole line.
    EditFault? TakeOutLines(Func<MapEntry, bool> isGone, bool hasOthers)
    {
        var kept = map.Written.FirstOrDefault(e => !isGone(e));
        var first = map.Written[0];
        if (kept is null)
        {
            pen.Put(first.Start, map.Written[^1].End, hasOthers ? "" : "{}");
            return null;
        }

        if (kept != first)
        {
            if (FileComments.Between(pen.Source, first.Start, kept.Start, map).Count > 0)
            {
                return Commented(pen, first);
            }

            pen.Put(first.Start, kept.Start, "");
        }

        foreach (var entry in map.Written.SkipWhile(e => e != kept).Where(isGone))
        {
            pen.Put(pen.StartOfLine(entry.Start), pen.NextLine(pen.EndOfLine(entry.End)), "");
        }

        return null;
    }

    /// <summary>A comment beside the key has no place once the key is gone.</summary>
    public static EditFault Commented(Pen pen, MapEntry entry) =>
        new(
            pen.Source.At(entry.Start, entry.End),
            "This cannot be taken out without the comment beside it.",
            "Take it out by hand, and do the rest again."
        );

    // Lines of a map share one indent; the first key of an item can come after its hyphen.
    string Indent(int at) => new(' ', at - pen.StartOfLine(at));
}
