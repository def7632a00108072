using System.Collections.Immutable;
using System.Globalization;
using Spoolbook.Printing;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Schools;

/// <summary>
/// Does the same to several productions, as many at a time as the machine has cores, and prints what came of each in the order of
/// their names. A fault in one stops none of the others. No more is held than what is in work and what waits to be printed.
/// </summary>
/// <param name="doing">What is done, for the line of progress: "checking".</param>
/// <param name="work">What is done to one production, in surroundings of its own.</param>
internal sealed class SeveralProductions(
    string doing,
    ImmutableArray<string> names,
    ISeveralForm form,
    CommandEnvironment around,
    Func<string, CommandEnvironment, PipelineResult> work
)
{
    // Productions done ahead of a slow one wait as text; more than these wait to be begun.
    const int MostAhead = 4;

    // Reading a deep tree of YAML takes stack, as on the first thread.
    const int Stack = 16 * 1024 * 1024;

    static readonly TimeSpan _look = TimeSpan.FromMilliseconds(200);

    readonly Lock _gate = new();
    readonly ProductionDone?[] _done = new ProductionDone?[names.Length];
    readonly ProgressLine _progress = new(doing, names.Length, around);
    int _next,
        _printed;
    bool _ended;

    /// <summary>The school whose productions these are; null where they are no school's, or not all of them.</summary>
    public SchoolTerm? Term { get; init; }

    /// <summary>Whether a warning fails as an error does.</summary>
    public bool IsStrict { get; init; }

    /// <summary>Does all of it; returns what it came to.</summary>
    public SeveralSum Run()
    {
        using var interrupt = new Interrupt(around.Stop);
        var workers = Enumerable
            .Range(0, Math.Min(Environment.ProcessorCount, names.Length))
            .Select(_ => new Thread(() => Work(interrupt.Token), Stack))
            .ToList();
        workers.ForEach(worker => worker.Start());
        try
        {
            return Print(interrupt.Token);
        }
        finally
        {
            _ended = true;
            workers.ForEach(worker => worker.Join());
        }
    }

    void Work(CancellationToken stop)
    {
        while (Take(stop) is { } at)
        {
            var done = One(names[at]);
            lock (_gate)
            {
                _done[at] = done;
            }
        }
    }

    // Null where nothing is left to begin.
    int? Take(CancellationToken stop)
    {
        while (true)
        {
            lock (_gate)
            {
                if (_ended || stop.IsCancellationRequested || _next >= names.Length)
                {
                    return null;
                }

                if (_next - _printed < MostAhead * Environment.ProcessorCount)
                {
                    _progress.Begun(names[_next]);
                    return _next++;
                }
            }

            Thread.Sleep(_look);
        }
    }

    ProductionDone One(string name)
    {
        using var output = new StringWriter { NewLine = "\n" };
        using var error = new StringWriter { NewLine = "\n" };
        var own = around with { Out = output, Error = error, Progress = new Progress() };
        var found = CheckedProduction.Nothing;
        PipelineResult? result = null;
        own.Progress.Print = unfinished => found = unfinished;
        var status = CommandLine.Guarded(own, () =>
        {
            result = work(name, own);
            found = result.Found;
            Term?.Add(found);
            return found.Fails(IsStrict) || (result.Written is null && result.End != PipelineEnd.Checked)
                ? ExitStatus.ErrorsFound
                : ExitStatus.Well;
        });
        var done = new ProductionDone(name, status, "", "")
        {
            Errors = Count(found, Level.Error),
            Warnings = Count(found, Level.Warning),
            Notes = Count(found, Level.Note),
            NotLookedAt = found.IsUnfinished ? [] : [.. found.NotLookedAt.Select(open => open.Question).Distinct()],
            Papers = result?.Written?.Files.Count(f => f.What != WriteResult.Removed),
            ChangedPapers = result?.Written?.Files.Count(f => f.What is WriteResult.New or WriteResult.Changed) ?? 0,
        };
        var printed = "";
        status = CommandLine.Guarded(own, () =>
        {
            printed = form.Part(name, found, done, own);
            return status;
        });
        var notes = string.Join('\n', result?.Written?.Notes.Select(Plain.Text) ?? []);
        return done with { Status = status, Printed = printed, Said = error.ToString() + notes };
    }

    ProductionDone OfSchool(SchoolTerm term)
    {
        var (found, book) = term.Close();
        var written = book is null ? null : term.Papers?.Invoke(term.Folder, found, book);
        var done = new ProductionDone(term.Name, found.Fails(IsStrict) ? ExitStatus.ErrorsFound : ExitStatus.Well, "", "")
        {
            IsSchool = true,
            Papers = written?.Files.Count(f => f.What != WriteResult.Removed),
            ChangedPapers = written?.Files.Count(f => f.What is WriteResult.New or WriteResult.Changed) ?? 0,
            Errors = Count(found, Level.Error),
            Warnings = Count(found, Level.Warning),
            Notes = Count(found, Level.Note),
        };
        return done with { Printed = form.Part(term.Name, found, done, around) };
    }

    static int Count(CheckedProduction found, Level level) => found.Findings.Count(f => f.Level == level);

    SeveralSum Print(CancellationToken stop)
    {
        var sum = new SeveralSum(names.Length, 0);
        around.Out.Write(form.Head);
        for (var at = 0; at < names.Length && Wait(at, stop) is { } done; at++)
        {
            _progress.Clear();
            around.Out.Write(at == 0 ? "" : form.Between);
            around.Out.Write(done.Printed);
            around.Out.Flush();
            foreach (var line in done.Said.Split('\n', StringSplitOptions.RemoveEmptyEntries))
            {
                around.Error.WriteLine($"{Plain.Escaped(done.Name)}: {line}");
            }

            sum = sum.And(done);
        }

        if (Term is not null && sum.Done == names.Length)
        {
            var done = OfSchool(Term);
            around.Out.Write(sum.Done == 0 ? "" : form.Between);
            around.Out.Write(done.Printed);
            sum = sum.And(done);
        }

        _progress.Clear();
        around.Out.Write(form.Tail(sum, around));
        around.Out.Flush();
        if (sum.Done == names.Length)
        {
            return sum;
        }

        around.Error.WriteLine(
            string.Create(
                CultureInfo.InvariantCulture,
                $"spoolbook: stopped: {sum.Done} of {names.Length} productions are done. Give the same command again to go on."
            )
        );
        return sum with { Status = ExitStatus.Stopped };
    }

    // Null where it was stopped before this one was begun.
    ProductionDone? Wait(int at, CancellationToken stop)
    {
        while (true)
        {
            lock (_gate)
            {
                if (_done[at] is { } done)
                {
                    _done[at] = null;
                    _printed = at + 1;
                    return done;
                }

                if (stop.IsCancellationRequested && at >= _next)
                {
                    return null;
                }
            }

            _progress.Show(stop.IsCancellationRequested);
            Thread.Sleep(_progress.IsShown ? _look : TimeSpan.FromMilliseconds(5));
        }
    }
}
