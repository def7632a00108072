using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Shipments;
using Spoolbook.Shoot.Tests.Money;
using static Spoolbook.Shoot.Tests.Money.PricedProduction;
using static Spoolbook.Shoot.Tests.Sheets.Sheet;

namespace Spoolbook.Shoot.Tests.Shipments;

/// <summary>Amounts are worked out by hand at invented prices: 0.32 a foot with a minimum of 100, a box for 18, tax of 19 %.</summary>
public class ShipmentBillTests
{
    static SchoolProduction Production(string code, MinimumPer per, params long[] feet)
    {
        var rolls = feet.Select((f, i) => Shot(f, $"R0{i + 1}", i + 1));
        var production = Of([.. rolls]);
        return new SchoolProduction(
            code.ToLowerInvariant(),
            Books.Of(
                production with
                {
                    Code = Written(code),
                    Title = Written(code),
                    Lab = new Lab(default) { Name = Written("Harbour Film Lab"), BillTo = [Written(code)] },
                    Rates = Full with { Processes = [Process("ecn-2", 0.32m, 100m)], MinimumPer = Written(per) },
                }
            ),
            HasErrors: false
        );
    }

    static ShipmentBill Bill(SharedBy by, params SchoolProduction[] school) =>
        ShipmentBill.Of(ShipmentPlan.Make(school, [], new ShipmentWishes(new DateOnly(2026, 10, 16))).Shipments.Single(), by)!;

    [Fact]
    public void An_order_lacks_the_rest_of_its_minimum_once_and_productions_share_it_by_their_film()
    {
        // 100 and 50 ft at 0.32 are 32 and 16: 52 to the minimum of 100, shared two to one.
        var bill = Bill(SharedBy.Feet, Production("A", MinimumPer.Order, 100), Production("B", MinimumPer.Order, 50));
        Assert.Equal([(32.00m, 34.67m, 12.00m), (16.00m, 17.33m, 6.00m)], bill.Shares.Select(s => (s.Work, s.Minimum, s.Shipping)));
        // 19 % of 118 are 22.42.
        Assert.Equal((22.42m, 140.42m), (bill.Tax, bill.Total));
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
}
