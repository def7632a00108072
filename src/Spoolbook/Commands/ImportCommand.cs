using System.CommandLine;
using Spoolbook.Entry;
using Spoolbook.Importing;
using Spoolbook.Papers.Pages;
using Spoolbook.Printing;
using Spoolbook.Reading.Files;
using Spoolbook.Writing;

namespace Spoolbook.Commands;

/// <summary><c>spoolbook import</c>: writes takes typed into a table to the roll files.</summary>
internal static class ImportCommand
{
    public static Command Build(CommandEnvironment around)
    {
        var file = new Argument<string?>("file")
        {
            Description =
                "The workbook with its sheet of takes filled in (.xlsx), or a plain table with its heads (.csv); - for standard input.",
            Arity = ArgumentArity.ZeroOrOne,
        };
        var production = CommonOptions.Production();
        var undo = new Option<string?>("--undo")
        {
            Description = "Take the last import of this production back.",
            HelpName = "production",
            Arity = ArgumentArity.ZeroOrOne,
        };
        var dryRun = new Option<bool>("--dry-run") { Description = "Show what would change in the roll files, and write nothing." };
        var templates = Files.Templates(around);
        var format = Choice.Of<ImportFormat>("--format", "How the result is printed: text, or json for programs.");
        var command = new Command("import", "Copies takes from a table into the roll files. Writes nothing unless all of it is right.")
        {
            file,
            production,
            undo,
            dryRun,
            templates,
            format,
        };
        command.Validators.Add(given =>
        {
            var isUndo = given.GetResult(undo) is not null;
            if (isUndo && given.GetValue(file) is not null)
            {
                given.AddError("--undo takes the production alone: spoolbook import --undo PRODUCTION.");
            }
            else if (!isUndo && given.GetValue(file) is null)
            {
                given.AddError("name the table: spoolbook import FILE, or spoolbook import FILE PRODUCTION.");
            }
            else if (ProductionPlace.Objection(isUndo ? given.GetValue(undo) : given.GetValue(production), around) is { } objection)
            {
                given.AddError(objection);
            }
        });
        command.SetAction(parsed =>
            parsed.GetResult(undo) is not null
                ? Undo(ProductionPlace.Of(parsed.GetValue(undo), around)!, around)
                : Run(
                    parsed.GetRequiredValue(file)!,
                    parsed.Given(production, around),
                    parsed.GetValue(dryRun),
                    Files.Templates(parsed.GetValue(templates), around),
                    parsed.GetValue(format),
                    around
                )
        );
        return command;
    }

    static int Run(string file, string production, bool dryRun, ITemplateSource templates, ImportFormat format, CommandEnvironment around)
    {
        if (Table(file, around) is not ({ } name, var bytes))
        {
            return ExitStatus.WrongUse;
        }

        WorkFolder.SettleProduction(production, RollFiles.ImportName, around);
        using var work = dryRun ? null : WorkFolder.Open(WorkFolder.OfProduction(production, around), RollFiles.ImportName, around);
        var files = new FolderFiles(Path.Combine(around.Folder, production));
        var findings = new FindingPrinter(production, format == ImportFormat.Json ? FindingFormat.Json : FindingFormat.Text, around);
        var before = Pipeline.Run(files, around.Progress).Found;
        if (before.Book is not { } book)
        {
            findings.Print(before);
            around.Error.WriteLine("Nothing was imported: the production cannot be read.");
            return ExitStatus.ErrorsFound;
        }

        around.Progress.Begin("reading the table");
        around.Progress.File = file;
        var texts = book
            .Production.Rolls.Select(r => r.Place.File)
            .Distinct()
            .ToDictionary(f => f, f => files.Open(f).Text, StringComparer.Ordinal);
        var plan = TakeImport.Plan(name, bytes, TakesTable.Heads(book.Production, templates), book, roll => texts.GetValueOrDefault(roll));
        var report = Report(plan, files, before, dryRun, around.Progress);
        if (report.Written)
        {
            around.Progress.Begin("writing the roll files");
            RollFiles.Put(work!, plan.Files, name);
        }

        if (format == ImportFormat.Json)
        {
            around.Out.Write(ImportJson.Write(report) + "\n");
        }
        else
        {
            ImportPrinter.Print(report, around);
        }

        return report.IsWell ? ExitStatus.Well : ExitStatus.ErrorsFound;
    }

    // The table's name and bytes; no name where it cannot be read, which was said then.
    static (string? Name, byte[] Bytes) Table(string file, CommandEnvironment around)
    {
        if (file == CommonOptions.StandardInput)
        {
            return (CommonOptions.StandardInputName, around.ReadBytes(TakeImport.MostBytes + 1));
        }

        var path = Path.Combine(around.Folder, file);
        if (!File.Exists(path))
        {
            around.Error.WriteLine($"spoolbook: there is no file '{Plain.Escaped(file)}'.");
            return (null, []);
        }

        var real = RealPath.Of(path);
        if (OrdinaryFile.InsteadOf(real) is { } other)
        {
            around.Error.WriteLine($"spoolbook: '{Plain.Escaped(file)}' is {other} and no file.");
            return (null, []);
        }

        return (Path.GetFileName(path), Bytes(real));
    }

    // One byte more than is taken in is enough to be refused by.
    static byte[] Bytes(string path)
    {
        using var file = File.OpenRead(path);
        var bytes = new byte[Math.Min(file.Length, TakeImport.MostBytes + 1)];
        file.ReadExactly(bytes);
        return bytes;
    }

    static int Undo(string production, CommandEnvironment around)
    {
        WorkFolder.SettleProduction(production, "import --undo", around);
        using var work = WorkFolder.Open(WorkFolder.OfProduction(production, around), "import --undo", around);
        if (RollFiles.KeepsFromUndoing(work, RollFiles.ImportName, table => $"the import of {table}") is { } why)
        {
            around.Error.WriteLine($"spoolbook: {Plain.Text(why)}");
            return ExitStatus.ErrorsFound;
        }

        var (table, files) = RollFiles.Undo(work);
        var head = new Ink(around.Colour).Bold($"Took back the import of {Plain.Text(table)}");
        around.Out.WriteLine($"{head}: {Plain.Text(string.Join(", ", files))} as before.");
        return ExitStatus.Well;
    }

    // Whatever is wrong is found before anything is written.
    static ImportReport Report(ImportPlan plan, FolderFiles files, CheckedProduction before, bool dryRun, Progress progress)
    {
        if (plan.Refused.Length > 0)
        {
            return new ImportReport(plan, dryRun) { Refused = plan.Refused };
        }

        var after = Pipeline.Run(new ChangedFiles(files, plan.Files), progress).Found;
        var report = new ImportReport(plan, dryRun) { After = after, Worse = NewFindings.In(after.Findings, before.Findings) };
        return report.HasNewErrors ? report
            : after.Book is { } book ? report with { Refused = plan.Against(book) }
            : report with { IsUnreadable = true };
    }
}
