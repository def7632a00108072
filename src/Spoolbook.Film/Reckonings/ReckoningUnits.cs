namespace Spoolbook.Film.Reckonings;

/// <summary>The unit of distances in an answer.</summary>
public enum ReckoningUnits
{
    /// <summary>Feet and inches.</summary>
    Feet,

    /// <summary>Metres.</summary>
    Metres,
}
