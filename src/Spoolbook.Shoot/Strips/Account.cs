namespace Spoolbook.Shoot.Strips;

/// <summary>The account that a frame is in.</summary>
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
