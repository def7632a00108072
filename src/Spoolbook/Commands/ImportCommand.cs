using System.Collections.Immutable;
using System.CommandLine;
using Spoolbook.Importing;
using Spoolbook.Intake;
using Spoolbook.Printing;
using Spoolbook.Reading.Files;
using Spoolbook.Shoot.Findings;
using Spoolbook.Writing;

namespace Spoolbook.Commands;

/// <summary><c>spoolbook import</c>: takes typed into a table, written into the roll files.</summary>
internal static class ImportCommand
{
    public static Command Build(Surroundings around)
    {
        var file = new Argument<string>("file") { Description = "The workbook with the sheet Takes filled in (.xlsx), or a plain table with its heads (.csv)." };
        var production = CommonOptions.Folder(around);
        var dryRun = new Option<bool>("--dry-run") { Description = "Show what would change in the roll files, and write nothing." };
        var command = new Command("import", "Writes takes that were typed into a table into the roll files; writes nothing unless all is well.") { file, production, dryRun };
        command.SetAction(parsed => Run(parsed.GetRequiredValue(file), parsed.GetRequiredValue(production), parsed.GetValue(dryRun), around));
        return command;
    }

    static int Run(string file, string production, bool dryRun, Surroundings around)
    {
        var path = Path.Combine(around.Folder, file);
        if (!File.Exists(path))
        {
            around.Error.WriteLine($"spoolbook: there is no file '{file}'.");
            return ExitStatus.WrongUse;
        }

        var files = new FolderFiles(Path.Combine(around.Folder, production));
        var before = Pipeline.Judge(files);
        if (before.Book is not { } book)
        {
            FindingPrinter.Print(before, production, FindingFormat.Text, around);
            around.Error.WriteLine("Nothing was taken in: the production cannot be read.");
            return ExitStatus.ErrorsFound;
        }

        var texts = book.Production.Rolls.Select(r => r.Place.File).Distinct().ToDictionary(f => f, f => files.Open(f).Text, StringComparer.Ordinal);
        var plan = TakeImport.Plan(Path.GetFileName(path), File.ReadAllBytes(path), TakesTable.Heads, book, name => texts.GetValueOrDefault(name));
        if (plan.Refused.Length > 0)
        {
            return Refuse(plan, plan.Refused, around);
        }

        var after = Pipeline.Judge(new ChangedFiles(files, plan.Files));
        var worse = NewIn(after.Findings, before.Findings);
        if (worse.Any(f => f.Level == Level.Error))
        {
            ImportPrinter.Print(plan, after, worse, around);
            around.Error.WriteLine("Nothing was written: with these takes the production would have new errors. Correct the table, or what the roll files say.");
            return ExitStatus.ErrorsFound;
        }

        if (after.Book is null || plan.Against(after.Book) is { Length: > 0 })
        {
            return Refuse(plan, after.Book is null ? [] : plan.Against(after.Book), around);
        }

        ImportPrinter.Print(plan, after, worse, around);
        if (dryRun)
        {
            ImportPrinter.PrintDifference(plan, around);
        }
        else
        {
            Replacement.Put([.. plan.Files.Select(f => (files.PathOf(f.Name), f.Before, f.After))]);
        }

        ImportPrinter.PrintSum(plan, dryRun, around);
        return ExitStatus.Well;
    }

    static int Refuse(ImportPlan plan, ImmutableArray<Objection> refused, Surroundings around)
    {
        ImportPrinter.Print(refused, Level.Error, around);
        ImportPrinter.Print(plan.Notes, Level.Note, around);
        around.Error.WriteLine("Nothing was written: correct the table, and import it again.");
        return ExitStatus.ErrorsFound;
    }

    // What was there before may have moved by a line; the same words about the same roll and take are the same finding.
    static ImmutableArray<Finding> NewIn(ImmutableArray<Finding> after, ImmutableArray<Finding> before)
    {
        var left = before.GroupBy(Key).ToDictionary(g => g.Key, g => g.Count());
        return [.. after.Where(f => !(left.TryGetValue(Key(f), out var count) && (left[Key(f)] = count - 1) >= 0))];
    }

    static (string, Level, string, string, string?, string?) Key(Finding f) => (f.Check, f.Level, f.Message, f.Place.File, f.Roll, f.Take);
}
