using System.Collections.Immutable;

namespace Spoolbook.Printing;

/// <summary>What several productions come to together.</summary>
/// <param name="Asked">Productions that were asked for.</param>
/// <param name="Done">Productions that the command was through with.</param>
internal sealed record SeveralSum(int Asked, int Done)
{
    public int Errors { get; init; }

    public int Warnings { get; init; }

    public int Notes { get; init; }

    public int Papers { get; init; }

    public int ChangedPapers { get; init; }

    /// <summary>The productions with errors.</summary>
    public ImmutableArray<string> WithErrors { get; init; } = [];

    /// <summary>The productions that something other than their own errors stopped.</summary>
    public ImmutableArray<string> Faulty { get; init; } = [];

    /// <summary>In how many productions no check could judge a question, by its name.</summary>
    public ImmutableSortedDictionary<string, int> NotLookedAt { get; init; } =
        ImmutableSortedDictionary.Create<string, int>(StringComparer.Ordinal);

    /// <summary>The exit status of the command: the gravest of all.</summary>
    public int Status { get; init; } = ExitStatus.Well;

    /// <summary>With one more production.</summary>
    public SeveralSum And(ProductionDone done) =>
        this with
        {
            Done = Done + (done.IsSchool ? 0 : 1),
            Errors = Errors + done.Errors,
            Warnings = Warnings + done.Warnings,
            Notes = Notes + done.Notes,
            Papers = Papers + (done.Papers ?? 0),
            ChangedPapers = ChangedPapers + done.ChangedPapers,
            WithErrors = done is { IsFaulty: false, Status: ExitStatus.ErrorsFound } ? WithErrors.Add(done.Name) : WithErrors,
            Faulty = done.IsFaulty ? Faulty.Add(done.Name) : Faulty,
            NotLookedAt = done.NotLookedAt.Aggregate(NotLookedAt, (all, q) => all.SetItem(q, all.GetValueOrDefault(q) + 1)),
            Status = Weight(done.Status) > Weight(Status) ? done.Status : Status,
        };

    // The gravest: Spoolbook itself broke, then the disk, then another process, then errors in the record.
    static int Weight(int status) =>
        status switch
        {
            ExitStatus.Well => 0,
            ExitStatus.ErrorsFound => 1,
            ExitStatus.Busy => 2,
            ExitStatus.OutsideFailed => 3,
            _ => 4,
        };
}
