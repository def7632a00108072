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
            CostOf(Sent(null, 4), OnSunday(Came(null, 4))).Lines,
            l => l.Kind is CostKind.Came or CostKind.SentAway
        );

    [Fact]
    public void Stock_bought_back_at_a_price_costs_it() =>
        Assert.Equal(20.00m, CostOf(Sent(null, 4), OnSunday(Came(20m, 4))).Line(CostKind.Came).Amount);

    // Unit 5 comes from the store, goes, and comes back from another production, which is written first.
    [Fact]
    public void Stock_that_came_goes_and_comes_back_was_paid_for_when_it_first_came()
    {
        var first = Came(null, 5) with { From = Written("the store") };
        var again = OnSunday(Came(null, 5)) with { From = Written("another shoot") };
        var line = CostOf(again, Sent(null, 5), first).Line(CostKind.Came);

        Assert.Equal(("the store", 38.50m), (line.Name, line.Amount));
    }

    [Fact]
    public void Each_unit_that_comes_later_is_paid_for_on_its_own_day() =>
        Assert.Equal(
            [38.50m, 77.00m],
            CostOf(Came(null, 5), OnSunday(Came(null, 6, 7))).Lines.Where(l => l.Kind == CostKind.Came).Select(l => l.Amount!.Value)
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

    static StockCame OnSunday(StockCame came) => came with { On = Written(new StockTime(StockSheets.Sunday, null)) };

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
