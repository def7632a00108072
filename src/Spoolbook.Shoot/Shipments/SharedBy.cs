namespace Spoolbook.Shoot.Shipments;

/// <summary>What the common costs of a consignment are shared by.</summary>
public enum SharedBy
{
    /// <summary>The film in the cans.</summary>
    Feet,

    /// <summary>The number of cans.</summary>
    Cans,

    /// <summary>Each production the same.</summary>
    Productions,
}
