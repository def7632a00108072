using Spoolbook.Shoot.Records;

namespace Spoolbook.Printing;

/// <summary>Prints findings in the form that was asked for: at the end of a command, or when it breaks.</summary>
internal sealed class FindingPrinter
{
    readonly string _production;
    readonly FindingFormat _format;
    readonly CommandEnvironment _around;

    /// <param name="production">The production's path, as typed by the user.</param>
    public FindingPrinter(string production, FindingFormat format, CommandEnvironment around)
    {
        (_production, _format, _around) = (production, format, around);
        around.Progress.Print = Print;
    }

    /// <summary>Whether what could not be looked at is left out, where the same production is checked again and again.</summary>
    public bool IsBrief { get; init; }

    /// <summary>How much is printed for people; programs always get all of it.</summary>
    public Loudness Loudness { get; init; }

    /// <summary>Prints them, once: what breaks afterwards need not say them again.</summary>
    public void Print(CheckedProduction found)
    {
        var (production, format, around) = (_production, _format, _around);
        around.Progress.Print = null;
        switch (format)
        {
            case FindingFormat.Json:
                around.Out.WriteLine(FindingJson.Write(found));
                break;
            case FindingFormat.Sarif:
                around.Out.WriteLine(FindingSarif.Write(found, SarifPaths.For(production, around.Folder)));
                break;
            case FindingFormat.Github:
                foreach (var line in FindingCommands.Lines(found, SarifPaths.For(production, around.Folder)))
                {
                    around.Out.WriteLine(line);
                }

                break;
            default:
                PrintText(found);
                break;
        }
    }

    void PrintText(CheckedProduction found)
    {
        var ink = new Ink(_around.Colour);
        var text = new FindingText(ink, _around, found.Sources.Line);
        var isQuiet = Loudness == Loudness.Quiet;
        foreach (var line in found.Findings.Where(f => !isQuiet || f.Level == Level.Error).SelectMany(text.Lines))
        {
            _around.Out.WriteLine(line);
        }

        if (isQuiet)
        {
            return;
        }

        PrintAccepted(found, ink);

        var open = found.NotLookedAt;
        if (open.Length > 0 && !found.IsUnfinished && !IsBrief)
        {
            Write(ink.Dim("Not looked at, because it is not noted (spoolbook explain not-looked-at):"), 2);
            foreach (var line in open)
            {
                var shown = line
                    .Places.Take(Loudness == Loudness.Verbose ? line.Places.Length : 1)
                    .Select(p => Plain.Escaped(p.ToString()));
                var places = $"({string.Join(", ", shown)}{(line.Places.Length > 1 && Loudness != Loudness.Verbose ? ", …" : "")})";
                Write("  " + ink.Dim($"{Plain.Escaped(line.Message)} {places}"), 4);
            }

            _around.Out.WriteLine();
        }

        var waived = found.Waived.Length == 0 ? "" : $" ({found.Waived.Length} more intentional)";
        Write($"{Subject(found)}: {FindingText.Count(found.Findings)}{waived}.", 2);
    }

    void PrintAccepted(CheckedProduction found, Ink ink)
    {
        if (Loudness != Loudness.Verbose || found.Waived.Length == 0)
        {
            return;
        }

        Write(ink.Dim("Accepted as intentional:"), 2);
        foreach (var waived in found.Waived)
        {
            var (finding, reason) = (waived.Finding, waived.Waiver.Reason?.Value ?? "");
            var why = reason.Length > 0 ? $": {Plain.Escaped(reason)}" : "";
            Write("  " + ink.Dim($"{finding.Place}: {Plain.Escaped(finding.Message)} [{finding.Check}]{why}"), 4);
        }

        _around.Out.WriteLine();
    }

    void Write(string line, int indent)
    {
        foreach (var part in WrappedText.On(_around, line, indent))
        {
            _around.Out.WriteLine(part);
        }
    }

    static string Subject(CheckedProduction found)
    {
        if (found.IsUnfinished)
        {
            return "Checked in part";
        }

        if (found.Book is not { } book)
        {
            return "Nothing could be read";
        }

        var title = book.Production.Title.Value;
        var name = title.Length > 0 ? Plain.Escaped(title) : "A production without a title";
        return $"{name}, {Plain.Count(book.Rolls.Length, "roll")}, {Plain.Count(book.Rolls.Sum(r => r.Layers.Length), "take")}";
    }
}
