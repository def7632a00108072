using System.Collections.Immutable;
using Spoolbook.Reading.Keys;
using Spoolbook.Reading.Trees;
using YamlDotNet.Core;

namespace Spoolbook.Reading.Editing;

/// <summary>Changes keys in one take's map.</summary>
sealed class TakePen(Pen pen, MapNode map)
{
    /// <summary>Where a key comes in the order in which takes are written.</summary>
    public static int OrderOf(string key) => TakeKeys.Table.Keys.Select(k => k.Name).ToList().IndexOf(key);

    public EditFault? Write(ImmutableArray<KeyValue> keys)
    {
        foreach (var key in keys.OrderBy(k => OrderOf(k.Key)))
        {
            var entry = map.WrittenEntry(key.Key);
            if (key.Values.IsEmpty)
            {
                if (entry is not null && TakeOut(entry) is { } fault)
                {
                    return fault;
                }
            }
            else if (entry is not null)
            {
                Replace(entry, key.Values);
            }
            else
            {
                Add(key.Key, key.Values);
            }
        }

        return null;
    }

    void Replace(MapEntry entry, ImmutableArray<string> values)
    {
        var (from, to) = (entry.WrittenValue.Start, entry.WrittenValue.End);
        var text = YamlQuoting.Quote(values, (entry.WrittenValue as ScalarNode)?.Style ?? ScalarStyle.Any);
        if (from == to)
        {
            // Nothing is written there yet: what comes right after it must not run into it.
            var next = from < pen.Source.Text.Length ? pen.Source.Text[from] : '\n';
            text = " " + text + (char.IsWhiteSpace(next) || next is ',' or '}' ? "" : " ");
        }
        else if (from > 0 && pen.Source.Text[from - 1] == ':')
        {
            text = " " + text;
        }

        pen.Put(from, to, text);
    }

    void Add(string key, ImmutableArray<string> values)
    {
        var line = $"{key}: {YamlQuoting.Quote(values)}";
        var before = map.Written.LastOrDefault(e => e.WrittenName is { } name && OrderOf(name) >= 0 && OrderOf(name) < OrderOf(key));
        if (map.Written.IsEmpty)
        {
            pen.Put(map.Start + 1, map.Start + 1, line);
        }
        else if (map.InBrackets)
        {
            var at = before?.End ?? map.Written[0].Start;
            pen.Put(at, at, before is null ? line + ", " : ", " + line);
        }
        else if (before is null)
        {
            var first = map.Written[0].Start;
            pen.Put(first, first, line + pen.LineEnd + Indent(first));
        }
        else
        {
            pen.PutLineAfter(before.End, Indent(before.Start) + line);
        }
    }

    EditFault? TakeOut(MapEntry entry)
    {
        var i = map.Written.IndexOf(entry);
        if (!map.InBrackets)
        {
            return TakeOutLines(entry);
        }

        var (from, to) =
            i > 0 ? (map.Written[i - 1].End, entry.End)
            : map.Written.Length > 1 ? (entry.Start, map.Written[1].Start)
            : (entry.Start, entry.End);
        if (pen.Source.Text.AsSpan(from, to - from).Contains('#') && HasComment(from, entry.Start))
        {
            return Commented(entry);
        }

        pen.Put(from, to, "");
        return null;
    }

    // The line goes with its end; a comment behind the value would go too.
    EditFault? TakeOutLines(MapEntry entry)
    {
        var end = pen.EndOfLine(entry.End);
        if (!string.IsNullOrWhiteSpace(pen.Source.Text[entry.End..end]) || map.Written.Length == 1)
        {
            return Commented(entry);
        }

        var from = map.Written[0] == entry ? entry.Start : pen.StartOfLine(entry.Start);
        var to = map.Written[0] == entry ? map.Written[1].Start : pen.NextLine(end);
        pen.Put(from, to, "");
        return null;
    }

    bool HasComment(int from, int to) => pen.Source.Text.AsSpan(from, Math.Max(0, to - from)).Contains('#');

    EditFault Commented(MapEntry entry) =>
        new(
            pen.Source.At(entry.Start, entry.End),
            "This cannot be taken out without the comment beside it.",
            "Take it out by hand, and import again."
        );

    // A line of the same map begins with as many blanks; the first key of an item may stand after its hyphen.
    string Indent(int at) => new(' ', at - pen.StartOfLine(at));
}
