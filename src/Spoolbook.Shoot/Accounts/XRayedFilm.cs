using System.Collections.Immutable;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Accounts;

/// <summary>Film of one can that went through an X-ray machine.</summary>
/// <param name="Lot">The lot of the film.</param>
/// <param name="Unit">Which unit of the lot; null for a short end, or where nobody knows which unit was loaded.</param>
/// <param name="ShortEnd">The short end; null for a unit.</param>
/// <param name="Entries">The entries of the stock log about this film, before it was cut as well, in their order there.</param>
public sealed record XRayedFilm(StockLot Lot, int? Unit, StockShortEnd? ShortEnd, ImmutableArray<StockXRayed> Entries)
{
    /// <summary>How often it went through a machine.</summary>
    public int Passes => PassesOf(Entries);

    internal static int PassesOf(IEnumerable<StockXRayed> entries) => entries.Sum(e => e.Passes?.Value ?? 1);
}
