namespace Spoolbook.Shoot.Records;

/// <summary>The light on a subject: <c>daylight</c>, <c>tungsten</c> or <c>mixed</c>.</summary>
public enum SubjectLight
{
    /// <summary>About 5500 K.</summary>
    Daylight,

    /// <summary>3200 K.</summary>
    Tungsten,

    /// <summary>Both, intentional or not: no filter is right for it.</summary>
    Mixed,
}
