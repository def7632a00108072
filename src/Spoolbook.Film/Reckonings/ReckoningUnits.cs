namespace Spoolbook.Film.Reckonings;

/// <summary>The measure of distances in an answer.</summary>
public enum ReckoningUnits
{
    /// <summary>Feet and inches.</summary>
    Feet,

    /// <summary>Metres.</summary>
    Metres,
}
