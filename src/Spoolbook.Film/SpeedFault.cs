namespace Spoolbook.Film;

/// <summary>The ways in which a written speed fails to be one.</summary>
public enum SpeedFault
{
    /// <summary>Nothing is written.</summary>
    Empty,

    /// <summary>Zero frames a second, or fewer.</summary>
    NotAboveZero,

    /// <summary>A comma for the decimal point: <c>12,5</c>.</summary>
    DecimalComma,

    /// <summary>A fraction over nothing: <c>24/0</c>.</summary>
    OverZero,

    /// <summary>Faster than film runs in any camera: above 100,000 frames a second.</summary>
    TooFast,

    /// <summary>None of the forms that a speed has.</summary>
    NotASpeed,
}
