using System.Diagnostics;
using System.Globalization;
using Spoolbook.Fuzz.Targets;

namespace Spoolbook.Fuzz.Running;

/// <summary>Runs inputs, and sees what they cost.</summary>
internal sealed class Runner(ITarget target)
{
    /// <summary>More processor than this is a hang.</summary>
    public const double MostSeconds = 2;

    /// <summary>More memory than this is too much.</summary>
    public const long MostBytes = 500_000_000;

    const long Worth = 100_000_000;

    readonly Process _process = Process.GetCurrentProcess();

    /// <summary>When the running input began, in processor time; null between two.</summary>
    public TimeSpan? Began { get; private set; }

    /// <summary>The processor time that the running input took so far.</summary>
    public TimeSpan Taken => Began is { } began ? Processor() - began : TimeSpan.Zero;

    public Outcome Run(byte[] input)
    {
        IReadOnlyList<string> words = [];
        Find? find = null;
        var allocated = GC.GetTotalAllocatedBytes();
        var began = Processor();
        Began = began;
        try
        {
            words = [.. target.Run(input)];
        }
        catch (Exception wrong)
        {
            find = Find.Of(wrong);
        }

        Began = null;
        var seconds = (Processor() - began).TotalSeconds;
        allocated = GC.GetTotalAllocatedBytes() - allocated;
        return new Outcome(words, find ?? TooMuch(seconds, allocated), seconds, allocated);
    }

    static Find? TooMuch(double seconds, long allocated)
    {
        if (seconds > MostSeconds)
        {
            return new Find("Hang", string.Create(CultureInfo.InvariantCulture, $"{seconds:0.0} s of processor"));
        }

        return allocated > Worth && Peak() > MostBytes
            ? new Find(
                "Memory",
                string.Create(CultureInfo.InvariantCulture, $"{Peak() / 1_000_000} MB at its peak, {allocated / 1_000_000} MB in all")
            )
            : null;
    }

    /// <summary>The most memory that the process ever had.</summary>
    public static long Peak()
    {
        using var process = Process.GetCurrentProcess();
        return process.PeakWorkingSet64;
    }

    TimeSpan Processor()
    {
        lock (_process)
        {
            _process.Refresh();
            return _process.TotalProcessorTime;
        }
    }
}
