using System.Collections.Immutable;
using Spoolbook.Entry;
using Spoolbook.Entry.Lines;
using Spoolbook.Entry.Logging;
using Spoolbook.Importing;
using Spoolbook.Reading.Files;
using Spoolbook.Shoot;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Logging;

/// <summary>Lines about a production, one after the other: each is read with what the record says after the one before.</summary>
internal sealed class LogSession
{
    readonly IProductionFiles _files;
    readonly CommandEnvironment _around;
    readonly bool _hasSchemas;
    readonly bool _anyway;
    readonly Dictionary<string, ChangedFile> _changed = new(StringComparer.Ordinal);

    LogSession(IProductionFiles files, CheckedProduction found, LineDay day, bool hasSchemas, bool anyway, CommandEnvironment around)
    {
        (_files, Found, Day, _hasSchemas, _anyway, _around) = (files, found, day, hasSchemas, anyway, around);
    }

    /// <summary>The production as it is after the lines so far.</summary>
    public CheckedProduction Found { get; private set; }

    /// <summary>The shooting day of the lines.</summary>
    public LineDay Day { get; private set; }

    /// <summary>The files that the lines changed.</summary>
    public ImmutableArray<ChangedFile> Files => [.. _changed.Values.Where(f => f.Before != f.After)];

    /// <summary>What the production says before the next line.</summary>
    public LineContext Context => LineContext.Of(Found.Books!, Day.IsSaid ? Day.Day : Today);

    DateOnly Today => DateOnly.FromDateTime(_around.Now());

    /// <summary>Begins with a production as it is on the disk; the session's production has no books where it cannot be read.</summary>
    /// <param name="day">The day that a line before said; null for today.</param>
    /// <param name="hasSchemas">Whether the production has schemas for an editor.</param>
    public static LogSession Begin(LogSettings settings, DateOnly? day, bool hasSchemas, CommandEnvironment around) =>
        Of(new FolderFiles(Path.Combine(around.Folder, settings.Production)), settings, day, hasSchemas, around);

    /// <summary>The same with files from anywhere.</summary>
    public static LogSession Of(IProductionFiles files, LogSettings settings, DateOnly? day, bool hasSchemas, CommandEnvironment around) =>
        new(files, Pipeline.Run(files, around.Progress).Found, DayOf(day, around), hasSchemas, settings.Anyway, around);

    /// <summary>Takes a line.</summary>
    /// <returns>Null for an empty line.</returns>
    public LineAnswer? Say(LineText text)
    {
        var read = LineReader.Read(text.Text, text.File, text.Line, Context);
        if (read.Said is not { } said)
        {
            return read.Refused is null ? null : new LineAnswer(text) { Unread = read.Refused };
        }

        if (said.Day is { } day)
        {
            Day = new LineDay(day, true);
        }

        var files = new ChangedFiles(_files, Files);
        var change = RecordEdit.Of(
            said,
            Found.Books!.Production,
            new RecordFiles(files.Names, files.IsOneFile, _hasSchemas, name => files.Names.Contains(name) ? files.Open(name).Text : null),
            Day
        );
        var answer = new LineAnswer(text)
        {
            Said = said,
            Change = change,
            Roll = Now(change.Roll, Found.Books),
            Production = Found.Books.Production,
        };
        return change.File is { } file && change.Refused is null ? Check(answer, file) : answer;
    }

    // After midnight a crew that said no date is in the day before.
    static LineDay DayOf(DateOnly? said, CommandEnvironment around)
    {
        var now = around.Now();
        return said is { } day ? new LineDay(day, true) : new LineDay(DateOnly.FromDateTime(now.Hour < 6 ? now.AddDays(-1) : now), false);
    }

    LineAnswer Check(LineAnswer answer, ChangedFile file)
    {
        var was = _changed.GetValueOrDefault(file.Name);
        _changed[file.Name] = was is null ? file : was with { After = file.After };
        var after = Pipeline.Run(new ChangedFiles(_files, Files), _around.Progress).Found;
        answer = answer with { Worse = NewFindings.In(after.Findings, Found.Findings) };
        if (after.Books is not { } books || (!_anyway && answer.Worse.Any(f => f.Level == Level.Error)))
        {
            Restore(file.Name, was);
            return answer with { IsAgainstTheRecord = true };
        }

        Found = after;
        return answer with { Roll = Now(answer.Change!.Roll, books), Production = books.Production };
    }

    void Restore(string name, ChangedFile? was)
    {
        if (was is null)
        {
            _changed.Remove(name);
        }
        else
        {
            _changed[name] = was;
        }
    }

    static RollInCamera? Now(string? roll, Books books) =>
        books.Shoot.Rolls.FirstOrDefault(r => r.Roll.Name.Value == roll) is { } book ? RollInCamera.Of(book, books.Production) : null;
}
