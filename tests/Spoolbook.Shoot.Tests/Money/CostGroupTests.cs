using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Tests.Sheets;
using Spoolbook.Shoot.Tests.Stock;
using static Spoolbook.Shoot.Tests.Money.PricedProduction;

namespace Spoolbook.Shoot.Tests.Money;

public class CostGroupTests
{
    static readonly Lab PrepAndScan = new(default) { Services = [Sheet.Written("prep"), Sheet.Written("scan")] };

    [Fact]
    public void The_same_work_at_the_same_rate_is_one_line_with_its_rolls()
    {
        var groups = Order(Shot(100), Shot(100, "R02", 2), Shot(80, "R03", 3));

        Assert.Equal([CostKind.Process, CostKind.Prep, CostKind.Scan, CostKind.Shipping, CostKind.Tax], groups.Select(g => g.Kind));
        Assert.All(groups[..3], g => Assert.Equal(["R01", "R02", "R03"], g.Rolls));
        Assert.Equal(
            [(280, CostUnit.Foot, 89.60m), (3, CostUnit.Roll, 24.00m), (280, CostUnit.Foot, 126.00m)],
            groups[..3].Select(g => ((int)g.Quantity.ToDouble(), g.Unit, g.Amount!.Value))
        );
    }

    [Fact]
    public void Rolls_at_the_minimum_are_a_group_apart_and_are_counted_by_the_roll()
    {
        var groups = Order(Shot(100), Shot(40, "R02", 2), Shot(30, "R03", 3)).Where(g => g.Kind == CostKind.Process).ToList();

        Assert.Equal(2, groups.Count);
        Assert.Equal((1, CostUnit.Foot, 0.32m), (groups[0].Lines.Length, groups[0].Unit, groups[0].Rate));
        Assert.Equal((true, CostUnit.Roll, 25m, 50.00m), (groups[1].AtMinimum, groups[1].Unit, groups[1].Rate, groups[1].Amount));
        Assert.Equal(2, groups[1].Quantity);
    }

    [Fact]
    public void Work_on_rolls_is_one_line_over_all_consignments_and_each_box_is_a_line_of_its_own()
    {
        var gone = Shot(100).Lab(sent: new DateOnly(2026, 10, 5), services: "scan");
        var groups = Order(gone, Shot(100, "R02", 2));

        Assert.Equal(["R01", "R02"], groups.Single(g => g.Kind == CostKind.Scan).Rolls);
        Assert.Null(groups.Single(g => g.Kind == CostKind.Scan).Consignment);
        Assert.Equal([1, 2], groups.Where(g => g.Kind == CostKind.Shipping).Select(g => g.Consignment));
    }

    [Fact]
    public void Rolls_by_the_foot_are_one_line_whatever_the_minimum_and_rolls_at_two_minima_are_two()
    {
        var line = Order(Shot(100)).Single(g => g.Kind == CostKind.Process).Lines[0];
        var other = line with { Roll = "R02", Minimum = 20m };

        Assert.Single(CostGroup.Group([line, other]));
        Assert.Equal([25m, 20m], CostGroup.Group([AtMinimum(line), AtMinimum(other)]).Select(g => g.Rate));

        static CostLine AtMinimum(CostLine line) => line with { Quantity = 10, Amount = line.Minimum };
    }

    [Fact]
    public void Work_without_a_rate_has_no_amount_and_not_one_of_nothing()
    {
        var open = CostGroup.Group((SmallProduction.Of(Shot(100)) with { Lab = PrepAndScan }).Cost().Order);

        Assert.All(open, g => Assert.Null(g.Amount));
        Assert.False(open[0].RoundedApart);
    }

    [Fact]
    public void What_rounding_roll_by_roll_adds_is_shown_and_not_hidden()
    {
        // 61 ft 12 fr and 38 ft 28 fr are 100 ft: 45.00 in one piece, 27.59 and 17.42 by the roll.
        var apart = Order(Run((61 * 40) + 12, "R01", 1), Run((38 * 40) + 28, "R02", 2)).Single(g => g.Kind == CostKind.Scan);
        Assert.Equal((45.01m, true), (apart.Amount, apart.RoundedApart));
        Assert.False(Order(Shot(100)).Single(g => g.Kind == CostKind.Scan).RoundedApart);
    }

    // 1/6 of an hour at 240 is 40; 0.17 of one would be 40.80.
    [Theory]
    [InlineData(1, 6, 240, 5)]
    [InlineData(29, 250, 240, 3)]
    [InlineData(1, 2, 240, 2)]
    [InlineData(280, 1, 0.45, 2)]
    public void A_quantity_has_the_decimals_that_its_product_with_the_rate_needs(int of, int parts, decimal rate, int decimals)
    {
        var line = Order(Shot(100)).Single(g => g.Kind == CostKind.Scan).Lines[0] with
        {
            Quantity = new Film.Ratio(of, parts),
            Rate = rate,
        };

        Assert.Equal(decimals, new CostGroup([line]).Decimals);
    }

    static Sheet Run(long frames, string name, int unit) =>
        Sheet.Of(new Film.Footage(frames), name).FromUnit(unit).Take("7B/1", new Film.Footage(frames)).Unload();

    static List<CostGroup> Order(params Sheet[] sheets) => [.. CostGroup.Group((Of(sheets) with { Lab = PrepAndScan }).Cost().Order)];
}
