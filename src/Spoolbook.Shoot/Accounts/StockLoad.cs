using Spoolbook.Film;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Walks;

namespace Spoolbook.Shoot.Accounts;

/// <summary>A roll and the stock that it was loaded from: a whole unit, or a short end.</summary>
/// <param name="Roll">The roll, which may be a practice roll.</param>
/// <param name="Lot">The lot of its film.</param>
/// <param name="Parent">The roll whose short end it is; null for a whole unit.</param>
/// <param name="Book">Its strip and account; null where no strip could be made.</param>
/// <param name="Said">Film that it should hold, by the can of its unit or by its parent's strip, less ends thrown away when it was canned
/// again.</param>
/// <param name="Unit">Which unit of the lot, as written or as counted; null for a short end.</param>
public sealed record StockLoad(Roll Roll, StockLot Lot, Roll? Parent, RollBook? Book, Footage Said, int? Unit)
{
    /// <summary>Film that it held.</summary>
    public Footage Held => Book?.Strip.Loaded ?? Said;

    /// <summary>How often its film went through an X-ray machine.</summary>
    public int XRayed { get; init; }

    /// <summary>Whether it opened a sealed unit.</summary>
    public bool IsUnit => Parent is null;

    /// <summary>The walk of the roll's log.</summary>
    public RollWalk Walk { get; } = Book?.Walk ?? RollWalk.Of(Roll);

    /// <summary>The shooting day on which it was loaded.</summary>
    public DateOnly On => Walk.Loading.Day;

    /// <summary>The shooting day on which it was unloaded; null while it is in the camera.</summary>
    public DateOnly? Out => Walk.TakingOut?.Day;
}
