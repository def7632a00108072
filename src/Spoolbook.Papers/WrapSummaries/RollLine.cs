using Spoolbook.Papers.Facts;

namespace Spoolbook.Papers.WrapSummaries;

/// <summary>A roll in one line.</summary>
/// <param name="ShortEnd">Film left on it once it is out of the camera.</param>
/// <param name="InCamera">Film left on it while it is in a camera: no short end yet.</param>
/// <param name="ReloadedAs">What its short end was loaded as, or that it is still in a camera; empty where neither is so.</param>
public sealed record RollLine(
    string Roll,
    string Stock,
    string Takes,
    TallyFacts Tally,
    string ShortEnd,
    string InCamera,
    string Process,
    string Push,
    string Page,
    bool Practice,
    string ReloadedAs
);
