using System.Collections.Immutable;
using Spoolbook.Checks.Accepting;
using Spoolbook.Checks.Counters;
using Spoolbook.Checks.Kits;
using Spoolbook.Checks.Labs;
using Spoolbook.Checks.Lengths;
using Spoolbook.Checks.Speeds;
using Spoolbook.Checks.Stocks;

namespace Spoolbook.Checks;

/// <summary>The index of the checks: one line each. What is not listed here is not asked, and a test says so.</summary>
public static class CheckList
{
    /// <summary>Every check, by name within its group.</summary>
    public static ImmutableArray<Check> All { get; } =
    [
        HeadNotAllowed.Check,
        OverTheSpool.Check,

        OverlapWithoutRewind.Check,
        RewindMissed.Check,
        RunsBackwards.Check,
        TakeRepeated.Check,

        OutOfRange.Check,
        SpringOverrun.Check,

        LensNotInKit.Check,

        UnitLoadedTwice.Check,
        UnknownLot.Check,

        MixedPush.Check,
        ProcessMismatch.Check,
        ProcessNotRun.Check,

        .. WaiverChecks.All,
    ];

    /// <summary>The groups, in the order of the list.</summary>
    public static ImmutableArray<string> Groups { get; } = [.. All.Select(c => c.Group).Distinct(StringComparer.Ordinal)];

    internal static Check? Named(string name) => All.FirstOrDefault(c => c.Name == name);
}
