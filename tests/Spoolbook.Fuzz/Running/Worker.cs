using System.Diagnostics;
using System.Globalization;
using System.Runtime.InteropServices;
using Spoolbook.Fuzz.Mutations;
using Spoolbook.Fuzz.Targets;

namespace Spoolbook.Fuzz.Running;

/// <summary>
/// Spoils inputs and runs them, in a process that may die of one: whatever must be known afterwards is on disk before an input runs.
/// </summary>
internal sealed class Worker : IDisposable
{
    const int MostBytes = 200_000;
    const int MostChanges = 6;
    const int SmallStack = 1 << 20;
    const double HopelessSeconds = 20;
    const double Often = 2;

    readonly Places _places;
    readonly Coverage _coverage;
    readonly ITarget _target;
    readonly Corpus _corpus;
    readonly Runner _runner;
    readonly Progress _progress;
    readonly IReadOnlyList<MutationKind> _kinds;
    readonly Stopwatch _watch = Stopwatch.StartNew();
    readonly FileStream _current;
    byte[] _input = [];
    volatile bool _stopped;
    double _counted;
    double _said;

    public Worker(Places places, string target)
    {
        _places = places;
        _coverage = new Coverage();
        _progress = Progress.Read(places.Progress);
        _corpus = new Corpus(places);
        _target = TargetList.Find(target);
        _runner = new Runner(_target);
        // Half of what happens knows the grammar, whatever the numbers of kinds are.
        _kinds = [.. ByteKinds.All, .. Enumerable.Repeat(_target.Grammar, 2).SelectMany(g => g)];
        _current = new FileStream(places.Current, FileMode.Create, FileAccess.Write, FileShare.Read, 0);
    }

    public void Dispose() => _current.Dispose();

    /// <summary>Works until the time is over, or somebody stops it.</summary>
    public int Work(double seconds)
    {
        using var interrupt = PosixSignalRegistration.Create(PosixSignal.SIGINT, Stop);
        using var terminate = PosixSignalRegistration.Create(PosixSignal.SIGTERM, Stop);
        Background(Watch);
        Background(WaitForParent);
        var status = ExitCode.Done;

        // The stack of a main thread elsewhere: what overflows it there must overflow it here.
        var work = new Thread(() => status = Spoil(seconds), SmallStack);
        work.Start();
        work.Join();
        Save();
        return status;
    }

    int Spoil(double seconds)
    {
        foreach (var input in _corpus.Inputs.ToList())
        {
            if (_stopped)
            {
                return ExitCode.Done;
            }

            Learn(input);
        }

        while (!_stopped && _watch.Elapsed.TotalSeconds < seconds)
        {
            _progress.Executions++;
            var input = Spoilt();
            var (outcome, isNew) = Learn(input);
            if (outcome.Find is not null && Runner.Peak() > Runner.MostBytes)
            {
                return ExitCode.Afresh;
            }

            if (isNew)
            {
                _corpus.Keep(input);
            }

            if (_watch.Elapsed.TotalSeconds - _counted > Often)
            {
                Save();
            }
        }

        return ExitCode.Done;
    }

    byte[] Spoilt()
    {
        // A number of its own for each execution, so that a new start goes on instead of beginning again.
        var chance = new Chance(
            unchecked((_progress.Seed * 7919) + (int)(_progress.Executions * 2_654_435_761)),
            _corpus.Words,
            _corpus.Choose
        );
        var input = _corpus.Choose(chance);
        for (var changes = 1 + chance.Below(MostChanges); changes > 0; changes--)
        {
            var spoilt = chance.Of(_kinds).Change(input.Length == 0 ? [32] : input, chance);
            input = spoilt.Length > MostBytes ? spoilt[..MostBytes] : spoilt;
        }

        return input;
    }

    (Outcome Outcome, bool IsNew) Learn(byte[] input)
    {
        var outcome = Run(input);
        if (outcome.Find is { Key: "Hang" })
        {
            // The first time, the compiler may have taken the time.
            outcome = Run(input);
        }

        if (outcome.Find is { } find)
        {
            if (find.Save(_places.Finds, input))
            {
                Console.WriteLine($"  find: {find.Key}");
            }

            return (outcome, false);
        }

        var isNew = _coverage.Add(outcome.Words);
        var cells = _coverage.New();
        if (cells.Count > 0)
        {
            // What two threads reach by the way, or code that runs once, is no news.
            Run(input);
            isNew |= _coverage.Has(cells);
            _coverage.Add(cells);
        }

        return (outcome, isNew);
    }

    Outcome Run(byte[] input)
    {
        _input = input;
        _current.SetLength(0);
        _current.Position = 0;
        _current.Write(input);
        _coverage.Clear();
        return _runner.Run(input);
    }

    void Watch()
    {
        while (true)
        {
            Thread.Sleep(50);
            if (GC.GetTotalMemory(false) > Runner.MostBytes && _runner.Began is not null)
            {
                End(
                    new Find(
                        "Memory",
                        string.Create(CultureInfo.InvariantCulture, $"{GC.GetTotalMemory(false) / 1_000_000} MB on the heap")
                    )
                );
            }

            if (_runner.Taken.TotalSeconds > HopelessSeconds)
            {
                End(new Find("Hang without end", string.Create(CultureInfo.InvariantCulture, $"over {HopelessSeconds} s of processor")));
            }
        }
    }

    void End(Find find)
    {
        if (find.Save(_places.Finds, _input))
        {
            Console.WriteLine($"  find: {find.Key}");
        }

        Save();
        Environment.Exit(ExitCode.Afresh);
    }

    // Whoever started this process holds its input open; when that is killed, this ends as well.
    void WaitForParent()
    {
        while (Console.In.Read() >= 0) { }
        _stopped = true;
    }

    void Stop(PosixSignalContext signal)
    {
        signal.Cancel = true;
        _stopped = true;
    }

    void Save()
    {
        var now = _watch.Elapsed.TotalSeconds;
        _progress.Seconds += now - _counted;
        _counted = now;
        (_progress.Edges, _progress.Outcomes, _progress.Inputs) = (_coverage.Reached, _coverage.Outcomes, _corpus.Inputs.Count);
        _progress.Write(_places.Progress);
        if (now - _said > 10 * Often)
        {
            _said = now;
            Console.WriteLine(Report.Line(_target.Name, _places));
        }
    }

    static void Background(Action work) => new Thread(() => work()) { IsBackground = true }.Start();
}
