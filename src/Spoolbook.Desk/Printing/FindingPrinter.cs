using Spoolbook.Commands;

namespace Spoolbook.Printing;

/// <summary>Prints findings in the form that was asked for.</summary>
internal static class FindingPrinter
{
    /// <param name="production">The production's path, as the user named it.</param>
    public static void Print(Judged judged, string production, FindingFormat format, Surroundings around)
    {
        switch (format)
        {
            case FindingFormat.Json:
                around.Out.WriteLine(FindingJson.Write(judged));
                break;
            case FindingFormat.Sarif:
                around.Out.WriteLine(FindingSarif.Write(judged, SarifPaths.For(production, around.Folder)));
                break;
            default:
                PrintText(judged, around);
                break;
        }
    }

    static void PrintText(Judged judged, Surroundings around)
    {
        var ink = new Ink(around.Colour);
        var text = new FindingText(ink, around.Width, judged.Sources.Line);
        foreach (var line in judged.Findings.SelectMany(text.Lines))
        {
            around.Out.WriteLine(line);
        }

        var waived = judged.Waived.Length == 0 ? "" : $" ({judged.Waived.Length} more accepted on purpose)";
        around.Out.WriteLine($"{Subject(judged)}: {FindingText.Count(judged.Findings)}{waived}.");
    }

    static string Subject(Judged judged)
    {
        if (judged.Book is not { } book)
        {
            return "Nothing could be read";
        }

        var title = book.Production.Title.Value;
        var name = title.Length > 0 ? Plain.Text(title) : "A production without a title";
        return $"{name}, {Plain.Count(book.Rolls.Length, "roll")}, {Plain.Count(book.Rolls.Sum(r => r.Layers.Length), "take")}";
    }
}
