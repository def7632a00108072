namespace Spoolbook.Film;

/// <summary>The unit in which a length or a position was written.</summary>
public enum FilmLengthUnit
{
    /// <summary>Frames: <c>1252fr</c>.</summary>
    Frames,

    /// <summary>Feet and frames: <c>31+12</c>.</summary>
    FeetAndFrames,

    /// <summary>Decimal feet: <c>31.3ft</c>.</summary>
    Feet,

    /// <summary>Metres: <c>9.5m</c>.</summary>
    Metres,

    /// <summary>Time at the speed of the take: <c>12s</c>.</summary>
    Seconds,
}
