using Spoolbook.Film;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Accounts;

/// <summary>
/// The cost of stock that came after the first delivery, and the price of stock sent away: one line for each entry of
/// the stock log. Our own stock coming back costs nothing, and stock sent away brings nothing, unless a price was
/// agreed.
/// </summary>
static class CostTransfers
{
    public static IEnumerable<CostLine> Lines(StockBook stock, Production production) =>
        from entry in stock.Moves.Where(m => m.Counts).GroupBy(m => m.Entry, ReferenceEqualityComparer.Instance)
        let line = Line((StockEntry)entry.Key!, [.. entry], production)
        where line is not null
        select line.Reckoned();

    static CostLine? Line(StockEntry entry, List<StockMove> moves, Production production)
    {
        switch (entry)
        {
            case StockCame came:
                var charged = came.Price is null ? moves.Count(m => IsNew(m, production)) : moves.Count;
                return charged == 0 ? null : Of(CostKind.Came, moves[0], charged, came.Price?.Value ?? moves[0].Lot.UnitPrice?.Value);
            case StockSentAway { Price: { } price }:
                return Of(CostKind.SentAway, moves[0], -moves.Count, price.Value);
            default:
                return null;
        }
    }

    // The first time that a unit comes which was not in the first delivery.
    static bool IsNew(StockMove move, Production production) =>
        move.Unit > move.Lot.Units.Value
        && ReferenceEquals(
            move.Entry,
            production
                .StockLog.OfType<StockCame>()
                .Where(e => e.Lot?.Value == move.Lot.Name.Value && StockStory.UnitsOf(e).Contains(move.Unit.Value))
                .MinBy(e => e.At)
        );

    static CostLine Of(CostKind kind, StockMove move, int units, decimal? price) =>
        new()
        {
            Stage = CostStage.Bought,
            Kind = kind,
            Lot = move.Lot.Name.Value,
            Name = move.With,
            Quantity = new Ratio(units, 1),
            Unit = CostUnit.Unit,
            Rate = price,
        };
}
