namespace Spoolbook.Shoot.Records;

/// <summary>
/// An effect made in the camera, as declared to the lab: <c>fade</c>, <c>dissolve</c>, <c>double-exposure</c> or
/// <c>hand-cranked</c>.
/// </summary>
public enum DeclaredEffect
{
    /// <summary>From black or to black.</summary>
    Fade,

    /// <summary>A fade out and a fade in over one another.</summary>
    Dissolve,

    /// <summary>Two or more takes over one another.</summary>
    DoubleExposure,

    /// <summary>Speed and exposure waver.</summary>
    HandCranked,
}
