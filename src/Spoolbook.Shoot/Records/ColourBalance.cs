namespace Spoolbook.Shoot.Records;

/// <summary>The light that a stock is balanced for: <c>daylight</c>, <c>tungsten</c>, or <c>none</c> for black and white.</summary>
public enum ColourBalance
{
    /// <summary>Black and white.</summary>
    None,

    /// <summary>About 5500 K.</summary>
    Daylight,

    /// <summary>3200 K.</summary>
    Tungsten,
}
