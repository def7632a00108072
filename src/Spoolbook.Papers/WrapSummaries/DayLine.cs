using System.Collections.Immutable;
using Spoolbook.Papers.Facts;

namespace Spoolbook.Papers.WrapSummaries;

/// <summary>The film of one day, or of the shoot to date.</summary>
/// <param name="Day">The day's number on the schedule.</param>
/// <param name="Where">The location, and the day's note.</param>
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
