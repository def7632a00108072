namespace Spoolbook.Shoot.Records;

/// <summary>How a piece came back from a loan.</summary>
public enum KitCondition
{
    /// <summary>Fit to lend again.</summary>
    Good,

    /// <summary>Marked or worn, and fit to lend again.</summary>
    Worn,

    /// <summary>Not fit to lend until it is repaired.</summary>
    Broken,
}
