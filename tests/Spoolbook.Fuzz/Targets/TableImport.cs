using Spoolbook.Entry;
using Spoolbook.Importing;
using Spoolbook.Papers.Pages;
using Spoolbook.Printing;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Fuzz.Targets;

/// <summary>A table taken into a production in memory, as <c>import --dry-run</c> does it.</summary>
internal static class TableImport
{
    static readonly CheckedProduction _before = Pipeline.Run(SmallShoot.Files).Found;
    static readonly TakeHeads _heads = TakesTable.Heads(_before.Books!.Production, new HouseTemplates());
    static readonly string? _text = SmallShoot.Files.Open("production.yaml").Text;

    public static IEnumerable<string> Run(string name, byte[] table)
    {
        var plan = TakeImport.Plan(name, table, _heads, _before.Book!, _ => _text);
        var report = new ImportReport(plan, true) { Refused = plan.Refused };
        var outcome = plan.Refused.Length > 0 ? "refused" : "planned";
        if (plan.Refused.Length == 0)
        {
            var after = Pipeline.Run(new ChangedFiles(SmallShoot.Files, plan.Files)).Found;
            if (after.Book is not { } book)
            {
                throw new BrokenPromiseException("An import that leaves a production that cannot be read");
            }

            var worse = after.Findings.Where(f => !_before.Findings.Any(b => b.Check == f.Check));
            report = report with { After = after, Worse = [.. worse] };
            report = report.HasNewErrors ? report : report with { Refused = plan.Against(book) };
        }

        using var output = new StringWriter { NewLine = "\n" };
        ImportPrinter.Print(report, Printing.Around(output, false, 100));
        _ = ImportJson.Write(report);
        var words = plan
            .Refused.Concat(plan.Notes)
            .Select(o => string.Join(' ', o.Message.Split(' ').Where(w => w.All(char.IsLetter)).Take(5)));
        return [outcome, report.Worse.Any(f => f.Level == Level.Error) ? "worse" : "no worse", .. words.Distinct()];
    }
}
