using System.Collections.Immutable;
using Spoolbook.Entry;
using Spoolbook.Importing;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Texts;

namespace Spoolbook.Printing;

/// <summary>Prints the result of importing a table.</summary>
internal static class ImportPrinter
{
    /// <summary>Prints refusals and notes, new findings, the difference of a dry run, and the count.</summary>
    public static void Print(ImportReport report, CommandEnvironment around)
    {
        var (plan, after) = (report.Plan, report.After);
        if (after is null || (!report.IsWell && !report.HasNewErrors))
        {
            Print(report.Refused, Level.Error, around);
            Print(plan.Notes, Level.Note, around);
            around.Error.WriteLine("Nothing was written: correct the table, and import it again.");
            return;
        }

        Print(plan, after, report.Worse, around);
        if (report.HasNewErrors)
        {
            around.Error.WriteLine(
                "Nothing was written: with these takes the production would have new errors. Correct the table, or what the roll files say."
            );
            return;
        }

        if (report.DryRun)
        {
            PrintDifference(plan, around);
        }

        PrintSum(plan, report.DryRun, around);
    }

    static void Print(ImportPlan plan, CheckedProduction after, ImmutableArray<Finding> worse, CommandEnvironment around)
    {
        Print(plan.Notes, Level.Note, around);
        var text = new FindingText(new Ink(around.Colour), around, after.Sources.Line);
        foreach (var finding in worse)
        {
            var lines = text.Lines(finding).ToList();
            if (plan.RowOf(finding.Roll, finding.Take) is { } row)
            {
                lines.Insert(lines.Count - 1, $"   = the take's row: {Plain.Escaped(row)}");
            }

            lines.ForEach(around.Out.WriteLine);
        }
    }

    static void Print(ImmutableArray<Objection> objections, Level level, CommandEnvironment around)
    {
        var ink = new Ink(around.Colour);
        var word = level == Level.Error ? ink.Red("error") : ink.Blue("note");
        foreach (var (where, message, help) in objections)
        {
            around.Out.WriteLine($"{ink.Bold(Plain.Escaped(where))}: {word}: {Plain.Escaped(message)}");
            if (help.Length > 0)
            {
                around.Out.WriteLine($"   {ink.Green("help:")} {Plain.Escaped(help)}");
            }
        }
    }

    // For people and for patch programs.
    static void PrintDifference(ImportPlan plan, CommandEnvironment around)
    {
        foreach (var line in plan.Files.SelectMany(f => UnifiedDiff.Write(f)))
        {
            around.Out.WriteLine(TextCharacters.AreAllowed(line) ? line : Plain.Text(line));
        }
    }

    static void PrintSum(ImportPlan plan, bool dryRun, CommandEnvironment around)
    {
        var ink = new Ink(around.Colour);
        var count = $"{Plain.Count(plan.New, "new take")}, {Plain.Count(plan.Changed, "take")} changed, {plan.Same} as they were";
        around.Out.WriteLine(
            plan.Files.Length == 0 ? $"{ink.Bold("Nothing changed")}: {count}."
            : dryRun ? $"{ink.Bold("Nothing was written")} (--dry-run): {count}."
            : $"{ink.Bold($"Wrote {Plain.Escaped(string.Join(", ", plan.Files.Select(f => f.Name)))}")}: {count}."
        );
    }
}
