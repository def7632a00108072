using Spoolbook.Film;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Tests.Sheets;
using Spoolbook.Shoot.Tests.Stock;
using static Spoolbook.Shoot.Tests.Money.PricedProduction;
using static Spoolbook.Shoot.Tests.Sheets.Sheet;

namespace Spoolbook.Shoot.Tests.Money;

public class ConsignmentTests
{
    [Fact]
    public void What_goes_in_two_consignments_ships_twice_and_is_taxed_on_each_order()
    {
        var cost = Two(In("2026-10-05", "R01"), In("2026-10-06", "R02")).Cost();
        Assert.Equal([18m, 18m], cost.Order.Where(l => l.Kind == CostKind.Shipping).Select(l => l.Amount!.Value));
        Assert.Equal([9.50m, 9.50m], cost.Order.Where(l => l.Kind == CostKind.Tax).Select(l => l.Amount!.Value));
        Assert.Equal(["R01", "R02"], cost.Sendings.Select(s => cost.OrderOf(s).First().Roll!));
    }

    [Fact]
    public void Shipping_is_paid_for_each_box()
    {
        var line = Two(In("2026-10-05", "R01", "R02") with { Boxes = Written(3) }).Cost().Line(CostKind.Shipping);
        Assert.Equal(((Ratio)3, 54.00m), (line.Quantity, line.Amount));
    }

    [Fact]
    public void A_roll_named_in_two_is_billed_with_the_earlier_in_any_order_of_writing()
    {
        var cost = Two(In("2026-10-06", "R01", "R02"), In("2026-10-05", "R01")).Cost();
        Assert.Equal(
            [("R01", 1), ("R02", 2)],
            cost.Order.Where(l => l.Kind == CostKind.Process).Select(l => (l.Roll!, l.Consignment!.Value))
        );
        Assert.Equal(["R01"], cost.Sendings[1].Again.Select(r => r.Roll.Name.Value));
    }

    [Fact]
    public void Rolls_that_only_say_their_day_go_together_by_day()
    {
        var cost = Of(Shot(100).Lab(sent: Day("2026-10-06")), Shot(100, "R02", 2).Lab(sent: Day("2026-10-05"))).Cost();
        Assert.Equal(["R02", "R01"], cost.Sendings.Select(s => s.Rolls.Single().Roll.Name.Value));
        Assert.Equal(2, cost.Order.Count(l => l.Kind == CostKind.Shipping));
    }

    [Fact]
    public void A_roll_that_says_the_day_of_a_consignment_went_with_it()
    {
        var production = Of(Shot(100).Lab(sent: Day("2026-10-05")), Shot(100, "R02", 2)) with
        {
            Lab = new Lab(default) { Consignments = [In("2026-10-05", "R02")] },
        };
        Assert.Equal(["R01", "R02"], production.Cost().Sendings.Single().Rolls.Select(r => r.Roll.Name.Value));
    }

    [Fact]
    public void What_has_gone_nowhere_yet_comes_last()
    {
        var sendings = Two(In(null, "R01"), In("2026-10-06", "R02")).Cost().Sendings;
        Assert.Equal([(1, Day("2026-10-06")), (2, (DateOnly?)null)], sendings.Select(s => (s.Number, s.SentOn)));
    }

    [Fact]
    public void A_roll_still_in_the_camera_needs_a_box_once_the_others_are_gone()
    {
        var inCamera = Sheet.Of(At(100), "R02").FromUnit(2).Take("8/1", At(50));
        Assert.DoesNotContain(Of(Shot(100), inCamera).Cost().At(CostStage.Committed), l => l.Kind == CostKind.Shipping);
        Assert.Contains(Of(Shot(100).Lab(sent: Day("2026-10-05")), inCamera).Cost().At(CostStage.Committed), l =>
            l.Kind == CostKind.Shipping
        );
    }

    [Fact]
    public void What_is_planned_for_rolls_in_the_camera_is_on_no_order()
    {
        var production = Of(Sheet.Of(At(100)).FromUnit(1).Take("8/1", At(50))) with
        {
            Lab = new Lab(default) { Consignments = [In(null, "R01")] },
        };
        Assert.Empty(production.Cost().Sendings);
    }

    static Production Two(params Consignment[] consignments) =>
        Of(Shot(100), Shot(100, "R02", 2)) with
        {
            Lab = new Lab(default) { Consignments = [.. consignments] },
        };

    static Consignment In(string? day, params string[] rolls) =>
        new(default) { SentOn = day is null ? null : Written(Day(day)), Rolls = [.. rolls.Select(Written)] };

    static DateOnly Day(string day) => DateOnly.ParseExact(day, "yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);
}
