namespace Spoolbook.Shoot.Strips;

/// <summary>An effect made in the camera, which the lab must not take for a mistake.</summary>
public enum EffectKind
{
    /// <summary>A take that opens from black.</summary>
    FadeIn,

    /// <summary>A take that closes to black.</summary>
    FadeOut,

    /// <summary>A fade out and a fade in over one another.</summary>
    Dissolve,

    /// <summary>Two or more takes over one another.</summary>
    Superimposition,

    /// <summary>A take cranked by hand: its speed, and with it the exposure, wavers.</summary>
    HandCranked,
}
