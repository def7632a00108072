using System.Collections.Immutable;
using Spoolbook.Papers.Facts;

namespace Spoolbook.Papers.WrapSummaries;

/// <summary>What one day did to the film, or the shoot to date.</summary>
/// <param name="Day">The day's number on the schedule.</param>
/// <param name="Where">Where it was shot, and what was noted of the day.</param>
public sealed record DayLine(
    string Day,
    string Date,
    ImmutableArray<string> Where,
    string Takes,
    string Loaded,
    TallyFacts Tally,
    string ShortEnds,
    string OnHand,
    string Screen,
    string Ratio,
    bool Total
);
