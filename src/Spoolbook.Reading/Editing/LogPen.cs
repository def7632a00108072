using System.Collections.Immutable;
using Spoolbook.Reading.Files;
using Spoolbook.Reading.Keys;
using Spoolbook.Reading.Trees;

namespace Spoolbook.Reading.Editing;

/// <summary>Writes new takes into a log, in the style of those that are in it.</summary>
/// <param name="inBrackets">Whether a take's keys stand between brackets on one line.</param>
sealed class LogPen(SourceFile source, MapNode roll, ImmutableArray<Node> entries, bool inBrackets)
{
    const string Deeper = "  ";

    /// <summary>Writes takes that follow the same entry.</summary>
    /// <param name="after">Which entry; -1 for the beginning of the log.</param>
    public EditFault? Write(IReadOnlyList<AddedTake> takes, int after, Pen pen)
    {
        var log = roll.WrittenEntry(RollKeys.Log.Name);
        switch (log?.WrittenValue)
        {
            case ListNode { InBrackets: true } list:
                PutInBrackets(list, after, string.Join(", ", takes.Select(t => $"{{take: {Flow(t)}}}")), pen);
                return null;
            case ListNode { Written.Length: > 0 }:
                return PutOnLines(after, takes, pen);
            case null when !roll.InBrackets:
                PutLog(takes, pen);
                return null;
            case ScalarNode { IsBlank: true } nothing when !roll.InBrackets:
                pen.Put(nothing.Start, nothing.End, "");
                pen.PutLineAfter(log.WrittenKey.End, Lines(Indent(log.Start) + Deeper + "- ", takes, pen));
                return null;
            default:
                return new EditFault(
                    source.At(roll.Start, roll.Start + 1),
                    "The roll has no list of what happened to it that a take could be put in.",
                    "Write `log:` in the roll, and each entry on a line of its own after `- `."
                );
        }
    }

    static string Flow(AddedTake take) =>
        "{" + string.Join(", ", Ordered(take).Select(k => $"{k.Key}: {YamlQuoting.Quote(k.Values)}")) + "}";

    static IEnumerable<KeyValue> Ordered(AddedTake take) => take.Keys.Where(k => !k.Values.IsEmpty).OrderBy(k => TakePen.OrderOf(k.Key));

    static void PutInBrackets(ListNode list, int after, string items, Pen pen)
    {
        var (at, text) =
            list.Written.IsEmpty ? (list.Start + 1, items)
            : after < 0 ? (list.Written[0].Start, items + ", ")
            : (list.Written[after].End, ", " + items);
        pen.Put(at, at, text);
    }

    EditFault? PutOnLines(int after, IReadOnlyList<AddedTake> takes, Pen pen)
    {
        var beside = entries[Math.Max(after, 0)];
        var start = pen.StartOfLine(beside.Start);
        var opening = source.Text[start..beside.Start];
        if (opening.Trim(' ') != "-")
        {
            return new EditFault(
                source.At(beside.Start, beside.End),
                "A take would have to be put beside this entry, which does not begin its line.",
                "Begin each entry of the log on a line of its own with `- `."
            );
        }

        if (after < 0)
        {
            pen.Put(start, start, Lines(opening, takes, pen) + pen.LineEnd);
        }
        else
        {
            pen.PutLineAfter(beside.End, Lines(opening, takes, pen));
        }

        return null;
    }

    void PutLog(IReadOnlyList<AddedTake> takes, Pen pen)
    {
        var before = roll.WrittenEntry(RollKeys.Load.Name) ?? roll.Written[^1];
        var indent = Indent(roll.Written[0].Start);
        pen.PutLineAfter(before.End, $"{indent}{RollKeys.Log.Name}:{pen.LineEnd}{Lines(indent + Deeper + "- ", takes, pen)}");
    }

    string Lines(string opening, IReadOnlyList<AddedTake> takes, Pen pen) =>
        string.Join(pen.LineEnd, takes.Select(t => Line(opening, t, pen)));

    string Line(string opening, AddedTake take, Pen pen)
    {
        if (inBrackets)
        {
            return $"{opening}{LogKeys.Take.Word}: {Flow(take)}";
        }

        var indent = new string(' ', opening.Length) + Deeper;
        var keys = string.Concat(Ordered(take).Select(k => $"{pen.LineEnd}{indent}{k.Key}: {YamlQuoting.Quote(k.Values)}"));
        return $"{opening}{LogKeys.Take.Word}:{keys}";
    }

    string Indent(int at) => new(' ', source.At(at, at).Column - 1);
}
