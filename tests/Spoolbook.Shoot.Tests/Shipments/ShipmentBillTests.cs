using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Shipments;
using Spoolbook.Shoot.Tests.Money;
using Spoolbook.Shoot.Tests.Sheets;
using Spoolbook.Shoot.Tests.Stock;
using static Spoolbook.Shoot.Tests.Money.PricedProduction;
using static Spoolbook.Shoot.Tests.Sheets.Sheet;

namespace Spoolbook.Shoot.Tests.Shipments;

/// <summary>Amounts are worked out by hand at invented prices: 0.32 a foot with a minimum of 100, a box for 18, tax of 19 %.</summary>
public class ShipmentBillTests
{
    static SchoolProduction Production(string code, MinimumPer per, params long[] feet) =>
        SmallSchool
            .Production(code, [.. feet.Select((f, i) => Shot(f, $"R0{i + 1}", i + 1))])
            .WithLab(l => l with { BillTo = [Written(code)] })
            .Priced(r => r with { Processes = [Process("ecn-2", 0.32m, 100m)], MinimumPer = Written(per) });

    static SchoolProduction Rates(SchoolProduction production, Func<Rates, Rates> change) =>
        production.With(p => p with { Rates = change(p.Rates!) });

    static ShipmentBill? Perhaps(SharedBy by, params SchoolProduction[] school) =>
        ShipmentBill.Of(SmallSchool.Plan(school).Shipments.Single(), by);

    static ShipmentBill Bill(SharedBy by, params SchoolProduction[] school) => Perhaps(by, school)!;

    [Fact]
    public void An_order_lacks_the_rest_of_its_minimum_once_and_productions_share_it_by_their_film()
    {
        // 100 and 50 ft at 0.32 are 32 and 16: 52 to the minimum of 100, shared two to one.
        var bill = Bill(SharedBy.Feet, Production("A", MinimumPer.Order, 100), Production("B", MinimumPer.Order, 50));
        Assert.Equal([(32.00m, 34.67m, 12.00m), (16.00m, 17.33m, 6.00m)], bill.Shares.Select(s => (s.Work, s.Minimum, s.Shipping)));
        // 19 % of 118 are 22.42.
        Assert.Equal((22.42m, 140.42m), (bill.Tax, bill.Total));
        Assert.Equal((48m, 52m, 18m), (bill.Work, bill.Minimum, bill.Shipping));
    }

    [Fact]
    public void Shared_by_cans_or_by_productions_a_short_roll_pays_as_a_long_one()
    {
        // A box costs 18: three cans pay three times as much as one, and two productions as much as each other.
        SchoolProduction[] school = [Production("A", MinimumPer.Order, 100, 100, 100), Production("B", MinimumPer.Order, 50)];
        Assert.Equal([13.50m, 4.50m], Bill(SharedBy.Cans, school).Shares.Select(s => s.Shipping));
        Assert.Equal([9.00m, 9.00m], Bill(SharedBy.Productions, school).Shares.Select(s => s.Shipping));
    }

    [Theory]
    [InlineData(MinimumPer.Roll, 200)]
    [InlineData(MinimumPer.Production, 100)]
    public void A_minimum_for_a_roll_or_a_production_is_its_own(MinimumPer per, int work)
    {
        var bill = Bill(SharedBy.Feet, Production("A", per, 100, 50), Production("B", per, 50));
        Assert.Equal([(decimal)work, 100m], bill.Shares.Select(s => s.Work));
        Assert.Equal(0, bill.Minimum);
    }

    [Fact]
    public void On_a_productions_own_order_rolls_together_cost_one_minimum()
    {
        var cost = Production("A", MinimumPer.Production, 100, 50).Books.Cost;
        var line = cost.Line(CostKind.Process);
        Assert.Equal((null, 100m, true, At(150)), (line.Roll, line.Amount, line.AtMinimum, line.Film));
        Assert.Equal(cost.Total, CostGroup.Group(cost.Lines).Sum(g => g.Amount ?? 0));
    }

    [Fact]
    public void Each_box_costs_its_shipping()
    {
        // Two cans, one to a box: twice 18.
        var plan = ShipmentPlan.Make([Production("A", MinimumPer.Roll, 100, 100)], [], SmallSchool.Friday with { BoxHolds = 1 });
        Assert.Equal(36m, ShipmentBill.Of(plan.Shipments.Single(), SharedBy.Feet)!.Shipping);
    }

    [Theory]
    [InlineData(SharedBy.Feet)]
    [InlineData(SharedBy.Cans)]
    [InlineData(SharedBy.Productions)]
    public void Cans_without_film_in_them_pay_their_box(SharedBy by)
    {
        // Two tests of raw stock of A and one of B: there is no foot of film to share the 18 by, so they share by cans.
        Sheet Blank(string roll, int unit) => Sheet.Of(At(100), roll).FromUnit(unit).Unload().Lab(send: true);
        var bill = Bill(
            by,
            SmallSchool.Production("A", Blank("R01", 1), Blank("R02", 2)).Priced(),
            SmallSchool.Production("B", Blank("R01", 1)).Priced()
        );
        Assert.Equal(by == SharedBy.Productions ? [9m, 9m] : [12m, 6m], bill.Shares.Select(s => s.Shipping));
        Assert.Equal(18m, bill.Shipping);
    }

    [Theory]
    [InlineData(MinimumPer.Order, 84)]
    [InlineData(MinimumPer.Roll, 0)]
    public void What_an_order_lacks_falls_on_those_whose_rolls_are_of_that_process(MinimumPer per, int lacking)
    {
        // 50 ft of B at 0.32 are 16, and 84 to the minimum that A writes. A has reversal only, and pays nothing of it. Where the
        // minimum is for a roll, A's is no business of B's, whose own has none.
        var a = SmallSchool
            .Production("A", Shot(100).Lab("bw-reversal"))
            .Priced(r => r with { Processes = [Process("ecn-2", 0.32m, 100m), Process("bw-reversal", 0.41m, null)] });
        var b = SmallSchool.Production("B", Shot(50)).Priced(r => r with { Processes = [Process("ecn-2", 0.32m, null)] });
        var bill = Bill(
            SharedBy.Productions,
            Rates(a, r => r with { MinimumPer = Written(per) }),
            Rates(b, r => r with { MinimumPer = Written(per) })
        );
        Assert.Equal([(41m, 0m), (16m, lacking)], bill.Shares.Select(s => (s.Work, s.Minimum)));
    }

    [Fact]
    public void An_order_exactly_at_its_minimum_lacks_nothing_and_a_foot_less_lacks_a_foot()
    {
        // 312.5 ft at 0.32 are 100; 300 ft are 96, and with 12 ft and 20 frames, half a foot, they reach it.
        Sheet Roll(long frames) => Sheet.Of(Frames(frames), "R02").FromUnit(2).Take("7B/2", Frames(frames)).Unload();
        SchoolProduction With(long frames) =>
            SmallSchool
                .Production("A", Shot(300), Roll(frames))
                .Priced(r => r with { Processes = [Process("ecn-2", 0.32m, 100m)], MinimumPer = Written(MinimumPer.Order) });
        Assert.Equal((100m, 0m), (Bill(SharedBy.Feet, With(500)).Work, Bill(SharedBy.Feet, With(500)).Minimum));
        Assert.Equal((99.68m, 0.32m), (Bill(SharedBy.Feet, With(460)).Work, Bill(SharedBy.Feet, With(460)).Minimum));
    }

    [Fact]
    public void Nobody_adds_up_prices_that_nobody_wrote_or_that_are_in_two_currencies()
    {
        var (a, b) = (Production("A", MinimumPer.Roll, 100), Production("B", MinimumPer.Roll, 100));
        var free = a.With(p => p with { Rates = null });
        Assert.Null(Perhaps(SharedBy.Feet, free));
        Assert.Null(Perhaps(SharedBy.Feet, a, Rates(b, r => r with { Currency = Written("CHF") })));

        // One without prices takes its part of the box at the other's price; its own work stays open.
        var bill = Bill(SharedBy.Feet, free, b);
        Assert.Equal([(0m, 9m), (100m, 9m)], bill.Shares.Select(s => (s.Work, s.Shipping)));
        Assert.True(bill.IsOpen);
    }

    [Fact]
    public void A_bill_is_open_while_a_price_is_missing()
    {
        var a = Production("A", MinimumPer.Roll, 100);
        Assert.False(Bill(SharedBy.Feet, a).IsOpen);
        Assert.True(Bill(SharedBy.Feet, Rates(a, r => r with { Shipping = null })).IsOpen);

        // One of two rolls goes through a process without a price.
        var other = SmallSchool.Production("B", Shot(100).Lab("bw-reversal")).Priced(r => r with { Processes = [] });
        Assert.True(Bill(SharedBy.Feet, a, other).IsOpen);
    }

    [Fact]
    public void What_only_a_later_production_writes_counts_for_the_whole_order()
    {
        var a = Rates(Production("A", MinimumPer.Order, 100), r => r with { MinimumPer = null, Shipping = null, Tax = null });
        var bill = Bill(SharedBy.Feet, a, Production("B", MinimumPer.Order, 50));
        Assert.Equal((52m, 18m, 22.42m), (bill.Minimum, bill.Shipping, bill.Tax));
        Assert.Equal((18m, 0.19m), (bill.BoxRate, bill.TaxRate));

        // Written by none, a minimum is a roll's, a box has no price, and there is no tax.
        var alone = Bill(SharedBy.Feet, a);
        Assert.Equal((100m, 0m, 0m, 0m), (alone.Work, alone.Minimum, alone.Shipping, alone.Tax));
        Assert.Equal((null, null), (alone.BoxRate, alone.TaxRate));
    }

    [Fact]
    public void Where_nothing_has_a_price_there_is_nothing_to_tax()
    {
        var bill = Bill(SharedBy.Feet, SmallSchool.Production("A").Priced(r => new Rates(default) { Currency = r.Currency, Tax = r.Tax }));
        Assert.Equal((0m, true), (bill.Total, bill.IsOpen));
    }
}
