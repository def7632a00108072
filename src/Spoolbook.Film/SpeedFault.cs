namespace Spoolbook.Film;

/// <summary>What is wrong with a written speed.</summary>
public enum SpeedFault
{
    /// <summary>Nothing is written.</summary>
    Empty,

    /// <summary>Zero frames a second, or fewer.</summary>
    NotAboveZero,

    /// <summary>A comma for the decimal point: <c>12,5</c>.</summary>
    DecimalComma,

    /// <summary>A fraction over zero: <c>24/0</c>.</summary>
    OverZero,

    /// <summary>Faster than film runs in any camera: above 100,000 frames a second.</summary>
    TooFast,

    /// <summary>Not written as a speed at all.</summary>
    NotASpeed,
}
