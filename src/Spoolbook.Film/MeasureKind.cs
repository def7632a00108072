namespace Spoolbook.Film;

/// <summary>What a number with a unit measures.</summary>
public enum MeasureKind
{
    /// <summary>A time, in seconds, minutes or hours.</summary>
    Time,

    /// <summary>Light on the subject, in footcandles or lux.</summary>
    Lux,

    /// <summary>Light from the subject, in candelas a square metre.</summary>
    Candelas,

    /// <summary>A part of a whole, from 0 to 1.</summary>
    Part,

    /// <summary>A size, in millimetres, centimetres or inches.</summary>
    Size,

    /// <summary>An angle above 0 and up to 360 degrees.</summary>
    Angle,

    /// <summary>A number above zero, without a unit.</summary>
    Number,

    /// <summary>A density from 0 to 10.</summary>
    Density,
}
