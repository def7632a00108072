using Spoolbook.Papers.Facts;

namespace Spoolbook.Papers.WrapSummaries;

/// <summary>A roll in one line.</summary>
public sealed record RollLine(
    string Roll,
    string Stock,
    string Takes,
    TallyFacts Tally,
    string Process,
    string Push,
    string Page,
    bool Practice
);
