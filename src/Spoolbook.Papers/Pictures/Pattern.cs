namespace Spoolbook.Papers.Pictures;

/// <summary>How film of each account is drawn: a pattern that survives a photocopy, and a tint.</summary>
enum Pattern
{
    Good,
    Hold,
    NoGood,
    Waste,
    Fog,
    ShortEnd,

    /// <summary>Above the film: exposed more than once.</summary>
    Twice,

    /// <summary>On a take: the dark part of a fade.</summary>
    Fade,
}
