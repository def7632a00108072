namespace Spoolbook.Shoot.Records;

/// <summary>Where on a take its slate is.</summary>
public enum SlatePlace
{
    /// <summary>At the start.</summary>
    Head,

    /// <summary>At the end, held upside down.</summary>
    Tail,

    /// <summary>Nowhere.</summary>
    None,
}
