namespace Spoolbook.Shoot.Records;

/// <summary>Which film of a roll is scanned.</summary>
public enum DeliveredTakes
{
    /// <summary>Everything that was exposed.</summary>
    WholeRoll,

    /// <summary>Good takes.</summary>
    Good,

    /// <summary>Good takes and those on hold.</summary>
    GoodAndHold,
}
