using Spoolbook.Reading.Files;
using Spoolbook.Reading.Keys;
using Spoolbook.Reading.Trees;

namespace Spoolbook.Reading.Editing;

/// <summary>Writes a roll that was just loaded: into its own file, or into the list of a production in one file.</summary>
public static class NewRollText
{
    /// <summary>Points an editor at the schema of a roll's file.</summary>
    public const string SchemaLine = "# yaml-language-server: $schema=../schemas/roll.schema.json";

    const string Deeper = "  ";

    /// <summary>The text of a new roll's file.</summary>
    /// <param name="lineEnd">The line end of the production's other files.</param>
    /// <param name="hasSchemas">Whether a folder <c>schemas</c> beside the rolls has the schema for an editor.</param>
    public static string File(NewRoll roll, string lineEnd, bool hasSchemas)
    {
        var lines = Lines(roll).Prepend($"{FileKeys.Version.Name}: 1");
        return string.Concat((hasSchemas ? lines.Prepend(SchemaLine) : lines).Select(line => line + lineEnd));
    }

    /// <summary>The text of a production in one file, with the roll at the end of its list.</summary>
    public static EditedText InList(string file, string text, NewRoll roll)
    {
        var source = new SourceFile(file, text);
        var findings = new FindingList();
        if (TreeReader.Read(source, findings) is not MapNode { InBrackets: false } root || findings.Count > 0)
        {
            return new EditedText(null, RollText.Impossible(source.Top));
        }

        var pen = new Pen(source);
        Write(roll, root, pen);
        return pen.Text() is { } with && EditProof.Holds(root, new SourceFile(file, with), roll)
            ? new EditedText(with, null)
            : new EditedText(null, RollText.Impossible(source.Top));
    }

    static void Write(NewRoll roll, MapNode root, Pen pen)
    {
        var rolls = root.WrittenEntry(FileKeys.Rolls.Name);
        switch (rolls?.WrittenValue)
        {
            case ListNode { InBrackets: true, Written: [.., var last] }:
                pen.Put(last.End, last.End, ", {" + string.Join(", ", Lines(roll).Select(line => line == Log ? Log + " []" : line)) + "}");
                break;
            case ListNode { Written: [.., var last] }:
                var before = pen.Source.Text[pen.StartOfLine(last.Start)..last.Start];
                pen.PutLineAfter(pen.PastComments(last.End, ColumnOf(rolls, pen)), Item(roll, before, pen.LineEnd));
                break;
            case null:
                pen.PutLineAfter(
                    pen.PastComments(root.Written[^1].End, ColumnOf(root.Written[^1], pen)),
                    $"{FileKeys.Rolls.Name}:{pen.LineEnd}{Item(roll, Deeper + "- ", pen.LineEnd)}"
                );
                break;
            case var nothing:
                pen.Put(pen.Source.Text.IndexOf(':', rolls.WrittenKey.End) + 1, nothing.End, "");
                pen.PutLineAfter(nothing.End, Item(roll, Deeper + "- ", pen.LineEnd));
                break;
        }
    }

    static string Log => RollKeys.Log.Name + ":";

    static string Item(NewRoll roll, string opening, string lineEnd) =>
        opening + string.Join(lineEnd + new string(' ', opening.Length), Lines(roll));

    static IEnumerable<string> Lines(NewRoll roll) =>
        [
            .. MapPen.Ordered(roll.Keys, RollKeys.Table).Select(MapPen.Line),
            $"{RollKeys.Load.Name}: {MapPen.InBrackets(roll.Load, LoadKeys.Table)}",
            Log,
        ];

    static int ColumnOf(MapEntry entry, Pen pen) => pen.Source.At(entry.Start, entry.Start).Column;
}
