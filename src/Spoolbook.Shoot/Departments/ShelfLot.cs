using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Departments;

/// <summary>A lot that the school bought. Each unit is on the shelf or in one production: <c>Bought = OnShelf + Out</c>.</summary>
/// <param name="Lot">The lot, as bought.</param>
/// <param name="Units">Its units, by number.</param>
public sealed record ShelfLot(StockLot Lot, ImmutableArray<ShelfUnit> Units)
{
    /// <summary>Units bought.</summary>
    public int Bought => Units.Length;

    /// <summary>Units on the shelf.</summary>
    public int OnShelf => Units.Count(u => u.Holder is null);

    /// <summary>Units that a production has or shot.</summary>
    public int Out => Units.Count(u => u.Holder is not null);

    /// <summary>Film on the shelf.</summary>
    public Footage FilmOnShelf => new(Lot.Length.Value.Frames * OnShelf);
}
