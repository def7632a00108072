namespace Spoolbook.Shoot.Records;

/// <summary>The unit in which papers tell lengths of film: <c>feet</c> or <c>metres</c>.</summary>
public enum LengthUnit
{
    /// <summary>Feet and frames.</summary>
    Feet,

    /// <summary>Metres.</summary>
    Metres,
}
