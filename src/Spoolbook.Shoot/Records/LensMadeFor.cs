namespace Spoolbook.Shoot.Records;

/// <summary>What a lens expects between itself and the film.</summary>
public enum LensMadeFor
{
    /// <summary>The glass of a prism that takes light to the finder.</summary>
    Prism,

    /// <summary>Nothing but air.</summary>
    Air,
}
