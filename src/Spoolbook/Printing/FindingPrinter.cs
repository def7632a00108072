using Spoolbook.Commands;

namespace Spoolbook.Printing;

/// <summary>Prints findings in the form that was asked for.</summary>
internal static class FindingPrinter
{
    public static void Print(Judged judged, FindingFormat format, Surroundings around)
    {
        if (format == FindingFormat.Json)
        {
            around.Out.WriteLine(FindingJson.Write(judged));
            return;
        }

        var ink = new Ink(around.Colour);
        var text = new FindingText(ink, around.Width, judged.Sources.Line);
        foreach (var line in judged.Findings.SelectMany(text.Lines))
        {
            around.Out.WriteLine(line);
        }

        var waived = judged.Waived.Length == 0 ? "" : $" ({judged.Waived.Length} more accepted on purpose)";
        around.Out.WriteLine($"{Subject(judged)}: {FindingText.Count(judged.Findings)}{waived}.");
    }

    static string Subject(Judged judged) => judged.Book is { } book
        ? $"{book.Production.Title.Value}: {book.Rolls.Length} rolls, {book.Rolls.Sum(r => r.Layers.Length)} takes"
        : "Nothing could be read";
}
