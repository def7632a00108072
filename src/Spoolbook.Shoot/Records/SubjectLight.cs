namespace Spoolbook.Shoot.Records;

/// <summary>The light that a subject stands in: <c>daylight</c>, <c>tungsten</c> or <c>mixed</c>.</summary>
public enum SubjectLight
{
    /// <summary>About 5500 K.</summary>
    Daylight,

    /// <summary>3200 K.</summary>
    Tungsten,

    /// <summary>Both, on purpose or because it could not be helped: nothing is right for it.</summary>
    Mixed,
}
