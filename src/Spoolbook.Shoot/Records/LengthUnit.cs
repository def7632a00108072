namespace Spoolbook.Shoot.Records;

/// <summary>The unit of length on the papers: <c>feet</c> or <c>metres</c>.</summary>
public enum LengthUnit
{
    /// <summary>Feet and frames.</summary>
    Feet,

    /// <summary>Metres.</summary>
    Metres,
}
