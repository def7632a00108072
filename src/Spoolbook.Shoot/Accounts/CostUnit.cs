namespace Spoolbook.Shoot.Accounts;

/// <summary>What the quantity of a line counts.</summary>
public enum CostUnit
{
    /// <summary>Units of raw stock.</summary>
    Unit,

    /// <summary>Feet, by the gauge's nominal count of frames.</summary>
    Foot,

    /// <summary>Metres, by the gauge's nominal count of frames to a foot of 0.3048 m.</summary>
    Metre,

    /// <summary>Hours that the film runs at the projection speed.</summary>
    Hour,

    /// <summary>Stops pushed or pulled; part of a stop counts as one.</summary>
    Stop,

    /// <summary>Rolls.</summary>
    Roll,

    /// <summary>Boxes sent.</summary>
    Box,

    /// <summary>Money that tax is computed on.</summary>
    Amount,
}
