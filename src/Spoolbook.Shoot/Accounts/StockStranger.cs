using System.Collections.Immutable;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Accounts;

/// <summary>A can that the stock log names and that never was: a unit or a piece of that number.</summary>
/// <param name="Entry">The entry that names it.</param>
/// <param name="Lot">The lot of its film.</param>
/// <param name="Unit">The number on the can; null for a piece.</param>
/// <param name="Parent">The roll whose short end the piece is said to be of; null for a unit.</param>
/// <param name="Piece">The number of the piece; null for a unit.</param>
public sealed record StockStranger(StockEntry Entry, StockLot Lot, int? Unit, Roll? Parent, int? Piece)
{
    /// <summary>
    /// The strangers of a log. Units that are moved have moves, possible or not; here are those that are only taken in or out
    /// of the cold, or X-rayed.
    /// </summary>
    /// <param name="shortEnds">Short ends kept, and their pieces.</param>
    public static ImmutableArray<StockStranger> Find(Production production, ImmutableArray<StockShortEnd> shortEnds) =>
        [.. production.StockLog.SelectMany(e => OfUnits(e, production).Concat(OfPiece(e, production, shortEnds)))];

    static IEnumerable<StockStranger> OfUnits(StockEntry entry, Production production) =>
        from lot in production.Lots.Where(l => l.Name.Value == entry.Lot?.Value).Take(1)
        where entry is StockIntoCold or StockOutOfCold or StockXRayed
        from unit in StockStory.UnitsOf(entry)
        where unit > lot.Units.Value && !Came(production, lot, unit)
        select new StockStranger(entry, lot, unit, null, null);

    static bool Came(Production production, StockLot lot, int unit) =>
        production.StockLog.OfType<StockCame>().Any(c => c.Lot?.Value == lot.Name.Value && StockStory.UnitsOf(c).Contains(unit));

    // Where there is no short end at all, moves say so.
    static IEnumerable<StockStranger> OfPiece(StockEntry entry, Production production, ImmutableArray<StockShortEnd> shortEnds) =>
        from piece in new[] { entry.Piece?.Value }.OfType<int>()
        let pieces = shortEnds.Where(e => e.Parent.Name.Value == entry.ShortEndOf?.Value).ToList()
        where pieces.Count > 0 && piece > pieces.Max(p => p.Piece)
        select new StockStranger(entry, pieces[0].Lot, null, pieces[0].Parent, piece);
}
