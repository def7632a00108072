namespace Spoolbook.Papers.Pictures;

/// <summary>How film of each account is drawn: a pattern that a photocopy keeps, and a tint for the eye.</summary>
enum Pattern
{
    Good,
    Hold,
    NoGood,
    Waste,
    Fog,
    ShortEnd,
}
