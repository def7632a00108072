using System.Collections.Immutable;
using Spoolbook.Asking;
using Spoolbook.Checks.Running;
using Spoolbook.Entry.Lines;
using Spoolbook.Logging;
using Spoolbook.Printing;
using Spoolbook.Shoot;
using Spoolbook.Writing;

namespace Spoolbook.Commands;

/// <summary>Takes lines into the record: all of them or none; at a prompt, one after the other.</summary>
internal sealed class LogRun(LogSettings settings, CommandEnvironment around)
{
    /// <summary>What stands for a file where a line comes from the command line or the keyboard.</summary>
    public const string Typed = "line";

    // Several people may log at once, on one machine or in one script; each waits for its turn, as long as turns go by.
    static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    DateOnly? _day;

    /// <summary>What came of the last line; null before the first.</summary>
    public LineAnswer? Last { get; private set; }

    /// <summary>The books after the last line; null before the first.</summary>
    public Books? Books { get; private set; }

    /// <summary>Takes lines, all or none.</summary>
    /// <param name="source">What they are called when they are taken back.</param>
    public int Take(ImmutableArray<LineText> lines, string source)
    {
        if (settings.DryRun)
        {
            WorkFolder.SettleProduction(settings.Production, RollFiles.LogName, around);
        }

        using var work = settings.DryRun ? null : WorkFolder.Open(Folder, RollFiles.LogName, around, Patience);
        var session = Session();
        return session.Found.Books is null ? Unreadable(session) : Take(lines, source, session, work);
    }

    /// <summary>Takes one line that is not from a file.</summary>
    public int Take(string line) => Take([new LineText(Typed, 1, line)], line);

    /// <summary>Takes lines as they are typed, each by itself.</summary>
    public int Prompt(ILineSource lines)
    {
        var status = ExitStatus.Well;
        while (lines.Read(PromptText(), Context) is { } line && line.Trim() is not ("quit" or "exit"))
        {
            if (!string.IsNullOrWhiteSpace(line))
            {
                status = Math.Max(status, Take(line));
            }
        }

        return status;
    }

    /// <summary>Takes the last lines back.</summary>
    public int Undo()
    {
        using var work = WorkFolder.Open(Folder, RollFiles.LogName + " --undo", around, Patience);
        if (RollFiles.KeepsFromUndoing(work, RollFiles.LogName, line => $"'{line}' was logged") is { } why)
        {
            around.Error.WriteLine($"spoolbook: {Plain.Text(why)}");
            return ExitStatus.ErrorsFound;
        }

        var (source, files) = RollFiles.Undo(work);
        var head = new Ink(around.Colour).Bold($"Took back '{Plain.Text(source)}'");
        around.Out.WriteLine($"{head}: {Plain.Text(string.Join(", ", files))} as before.");
        return ExitStatus.Well;
    }

    /// <summary>Says what is wrong with a production that cannot be read.</summary>
    public int Unreadable(LogSession session)
    {
        new FindingPrinter(settings.Production, settings.IsJson ? FindingFormat.Json : FindingFormat.Text, around).Print(session.Found);
        around.Error.WriteLine("Nothing was logged: the production cannot be read.");
        return ExitStatus.ErrorsFound;
    }

    /// <summary>The production as it is on the disk, to ask about it.</summary>
    public LogSession Session() =>
        LogSession.Begin(settings, _day, File.Exists(Path.Combine(Folder, WorkFolder.SchemasName, "roll.schema.json")), around);

    string Folder => WorkFolder.OfProduction(settings.Production, around);

    int Take(ImmutableArray<LineText> lines, string source, LogSession session, WorkFolder? work)
    {
        var printer = new LogPrinter(around, lines.Length > 1);
        var all = ImmutableArray.CreateBuilder<LineAnswer>();
        foreach (var answer in lines.Select(session.Say).OfType<LineAnswer>())
        {
            all.Add(answer);
            if (!settings.IsJson)
            {
                printer.Print(answer);
            }
        }

        var answers = all.ToImmutable();
        var isWell = answers.All(a => a.IsWell);
        if (isWell && work is not null)
        {
            around.Progress.Begin("writing the roll files");
            RollFiles.Put(work, session.Files, source);
        }

        (Last, Books) = (answers.LastOrDefault() ?? Last, session.Found.Books);
        _day = isWell && session.Day.IsSaid ? session.Day.Day : _day;
        if (settings.IsJson)
        {
            around.Out.Write(LogJson.Write(answers, session.Files, settings.DryRun) + "\n");
        }
        else
        {
            // So that a terminal shows both outputs in order.
            around.Out.Flush();
            printer.PrintEnd(answers, session.Files, settings.DryRun);
            around.Out.Flush();
        }

        return isWell ? ExitStatus.Well : ExitStatus.ErrorsFound;
    }

    LineContext? Context() => Session() is { Found.Books: not null } session ? session.Context : null;

    // How far the roll of the last line is, as on its dial.
    string PromptText() =>
        Last is { Roll: { At: { } at, Book.Roll: { Unload: null } roll }, Production: { } production }
            ? $"{Plain.Escaped(roll.Name.Value)} {new Context(production).Write(at)}> "
            : "> ";
}
