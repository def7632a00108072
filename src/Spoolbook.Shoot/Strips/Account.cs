namespace Spoolbook.Shoot.Strips;

/// <summary>Where a frame falls in the account of a roll.</summary>
public enum Account
{
    /// <summary>G.</summary>
    Good,

    /// <summary>H.</summary>
    Hold,

    /// <summary>NG.</summary>
    NoGood,

    /// <summary>W: see <see cref="WasteCause"/>.</summary>
    Waste,

    /// <summary>SE: unexposed and kept, or still in the camera.</summary>
    ShortEnd,
}
