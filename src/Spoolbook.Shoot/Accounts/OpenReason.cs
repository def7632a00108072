namespace Spoolbook.Shoot.Accounts;

/// <summary>Why a line has no amount.</summary>
public enum OpenReason
{
    /// <summary>No rate was written for it.</summary>
    NoRate,

    /// <summary>No process was written for the roll.</summary>
    NoProcess,

    /// <summary>The amount is above <see cref="CostBook.Most"/>: a slip of the pen, not a price.</summary>
    OutOfRange,
}
