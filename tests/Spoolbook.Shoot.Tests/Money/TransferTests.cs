using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Tests.Stock;
using static Spoolbook.Shoot.Tests.Money.PricedProduction;
using static Spoolbook.Shoot.Tests.Sheets.Sheet;

namespace Spoolbook.Shoot.Tests.Money;

public class TransferTests
{
    static readonly Located<StockTime> Friday = Written(new StockTime(StockSheets.Friday, null));

    [Fact]
    public void Stock_that_comes_later_costs_what_its_lot_costs_unless_it_has_a_price()
    {
        Assert.Equal(77.00m, CostOf(Came(null, 5, 6)).Line(CostKind.Came).Amount);
        Assert.Equal(40.00m, CostOf(Came(20m, 5, 6)).Line(CostKind.Came).Amount);
    }

    [Fact]
    public void Stock_given_free_is_written_with_a_price_of_nothing() =>
        Assert.Equal(0.00m, CostOf(Came(0m, 5)).Line(CostKind.Came).Amount);

    [Fact]
    public void Stock_that_comes_back_was_paid_for_already() =>
        Assert.DoesNotContain(
            CostOf(Sent(null, 4), Came(null, 4) with { On = Written(new StockTime(StockSheets.Sunday, null)) }).Lines,
            l => l.Kind is CostKind.Came or CostKind.SentAway
        );

    [Fact]
    public void A_price_for_stock_sent_away_is_taken_off()
    {
        var cost = CostOf(Sent(30m, 3, 4));
        Assert.Equal(-60.00m, cost.Line(CostKind.SentAway).Amount);
        Assert.Equal(cost.Line(CostKind.Stock).Amount - 60, cost.ToDate);
    }

    [Fact]
    public void Stock_that_comes_without_any_price_leaves_the_cost_open()
    {
        var priced = Of();
        var unpriced = priced with { Lots = [.. priced.Lots.Select(l => l with { UnitPrice = null })], StockLog = [Came(null, 5)] };
        Assert.Equal(OpenReason.NoRate, unpriced.Cost().Line(CostKind.Came).Open);
    }

    [Fact]
    public void What_cannot_have_happened_costs_nothing() =>
        Assert.DoesNotContain(CostOf(Came(20m, 1)).Lines, l => l.Kind == CostKind.Came);

    static CostBook CostOf(params StockEntry[] log) => (Of() with { StockLog = [.. log] }).Cost();

    static StockCame Came(decimal? price, params int[] units) =>
        new(default(Place))
        {
            On = Friday,
            Lot = Written("N250-A"),
            Units = [.. units.Select(Written)],
            Price = Perhaps(price),
        };

    static StockSentAway Sent(decimal? price, params int[] units) =>
        new(default(Place))
        {
            On = Friday,
            Lot = Written("N250-A"),
            Units = [.. units.Select(Written)],
            Price = Perhaps(price),
        };
}
