using Spoolbook.Papers.Facts;

namespace Spoolbook.Papers.WrapSummaries;

/// <summary>A roll in one line.</summary>
/// <param name="ReloadedAs">What its short end was loaded as; empty where it was not.</param>
public sealed record RollLine(
    string Roll,
    string Stock,
    string Takes,
    TallyFacts Tally,
    string Process,
    string Push,
    string Page,
    bool Practice,
    string ReloadedAs
);
