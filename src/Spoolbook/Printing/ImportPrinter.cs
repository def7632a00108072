using System.Collections.Immutable;
using Spoolbook.Importing;
using Spoolbook.Intake;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Printing;

/// <summary>Says what came of taking in a table.</summary>
internal static class ImportPrinter
{
    /// <summary>Prints notes about the table, and what the checks say anew.</summary>
    public static void Print(ImportPlan plan, Judged after, ImmutableArray<Finding> worse, Surroundings around)
    {
        Print(plan.Notes, Level.Note, around);
        var text = new FindingText(new Ink(around.Colour), around.Width, after.Sources.Line);
        foreach (var finding in worse)
        {
            var lines = text.Lines(finding).ToList();
            if (plan.RowOf(finding.Roll, finding.Take) is { } row)
            {
                lines.Insert(lines.Count - 1, $"   = the take's row: {Plain.Text(row)}");
            }

            lines.ForEach(around.Out.WriteLine);
        }
    }

    public static void Print(ImmutableArray<Objection> objections, Level level, Surroundings around)
    {
        var ink = new Ink(around.Colour);
        foreach (var (where, message, help) in objections)
        {
            around.Out.WriteLine($"{ink.Bold(Plain.Text(where))}: {(level == Level.Error ? ink.Red("error") : ink.Blue("note"))}: {Plain.Text(message)}");
            if (help.Length > 0)
            {
                around.Out.WriteLine($"   {ink.Green("help:")} {Plain.Text(help)}");
            }
        }
    }

    /// <summary>Prints the difference of the roll files, for people and for patch programs.</summary>
    public static void PrintDifference(ImportPlan plan, Surroundings around)
    {
        foreach (var line in plan.Files.SelectMany(f => UnifiedDiff.Of(f.Name, f.Before, f.After)))
        {
            around.Out.WriteLine(line);
        }
    }

    public static void PrintSum(ImportPlan plan, bool dryRun, Surroundings around)
    {
        var ink = new Ink(around.Colour);
        var count = $"{Plain.Count(plan.New, "new take")}, {Plain.Count(plan.Changed, "take")} changed, {plan.Same} as they were";
        around.Out.WriteLine(plan.Files.Length == 0 ? $"{ink.Bold("Nothing changed")}: {count}."
            : dryRun ? $"{ink.Bold("Nothing was written")} (--dry-run): {count}."
            : $"{ink.Bold($"Wrote {string.Join(", ", plan.Files.Select(f => f.Name))}")}: {count}.");
    }
}
