namespace Spoolbook.Shoot.Accounts;

/// <summary>Why a line has no amount.</summary>
public enum OpenReason
{
    /// <summary>No rate was written for it.</summary>
    NoRate,

    /// <summary>Nobody said which process the roll gets.</summary>
    NoProcess,

    /// <summary>The amount passes <see cref="CostBook.Most"/>: a slip of the pen, not a price.</summary>
    OutOfRange,
}
