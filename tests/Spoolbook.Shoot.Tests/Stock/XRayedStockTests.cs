using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Tests.Sheets;
using static Spoolbook.Shoot.Tests.Sheets.Sheet;
using static Spoolbook.Shoot.Tests.Stock.StockSheets;

namespace Spoolbook.Shoot.Tests.Stock;

/// <summary>
/// X-ray fog adds up from pass to pass, in exposed film as in raw stock (common practice: makers of film say so of every scanner).
/// </summary>
public class XRayedStockTests
{
    static readonly Place Nowhere = SmallProduction.Lot.Place;

    // A short end is left of unit 1, and R02 is shot on it the next day.
    static readonly Sheet First = Of(At(100)).FromUnit(1).LoadedOn(Friday).Head(At(4)).Take("7B/1", At(60)).Unload(At(2)).OutOn(Friday);
    static readonly Sheet OfShortEnd = Of(At(38), "R02").ShortEndOf("R01").LoadedOn(Saturday).Take("8A/1", At(20)).Unload().OutOn(Saturday);
    static readonly Sheet Second = Of(At(100), "R03").FromUnit(2).LoadedOn(Saturday).Take("9A/1", At(100)).Unload().OutOn(Saturday);

    static int[] Passes(params StockXRayed[] log)
    {
        var production = SmallProduction.Of(First, OfShortEnd, Second) with { StockLog = [.. log] };
        var stock = production.Stock();
        return [.. production.Rolls.Select(stock.XRaysOf)];
    }

    static StockXRayed XRay(DateOnly day, int passes, params int[] units) =>
        new(Nowhere)
        {
            On = Written(new StockTime(day, null)),
            Lot = Written("N250-A"),
            Units = [.. units.Select(Written)],
            Passes = Written(passes),
        };

    [Fact]
    public void Film_that_met_no_X_rays_has_no_passes() => Assert.Equal([0, 0, 0], Passes());

    [Fact]
    public void A_pass_of_a_unit_is_in_its_roll_and_in_the_short_end_cut_from_it() =>
        Assert.Equal([2, 2, 0], Passes(XRay(Friday.AddDays(-1), 2, 1)));

    [Fact]
    public void A_pass_after_the_short_end_was_cut_is_in_the_exposed_can_alone() =>
        Assert.Equal([1, 0, 0], Passes(XRay(Saturday, 1, 1)));

    [Fact]
    public void A_pass_of_the_short_end_is_not_in_its_parent() =>
        Assert.Equal([0, 1, 0], Passes(XRay(Saturday, 1) with { Lot = null, ShortEndOf = Written("R01") }));

    [Fact]
    public void A_pass_of_the_lot_is_in_every_roll_once_and_adds_to_those_of_a_unit() =>
        Assert.Equal([3, 3, 4], Passes(XRay(Friday.AddDays(-1), 3), XRay(Friday, 1, 2)));

    [Fact]
    public void A_pass_of_the_lot_missed_a_roll_that_was_at_the_lab()
    {
        var production = SmallProduction.Of(First.Lab(sent: Friday), Second) with { StockLog = [XRay(Saturday, 1)] };

        Assert.Equal([0, 1], production.Rolls.Select(production.Stock().XRaysOf));
    }

    [Fact]
    public void A_pass_of_the_lot_on_the_day_a_roll_went_to_the_lab_was_of_its_film_too()
    {
        var production = SmallProduction.Of(First.Lab(sent: Saturday), Second) with { StockLog = [XRay(Saturday, 1)] };

        Assert.Equal([1, 1], production.Rolls.Select(production.Stock().XRaysOf));
    }

    // R01 is unloaded at 18:00, and its short end cut.
    [Theory]
    [InlineData(0, 1)]
    [InlineData(1, 0)]
    public void A_pass_of_a_unit_up_to_the_moment_its_short_end_is_cut_is_in_the_short_end(int minute, int passes) =>
        Assert.Equal([1, passes, 0], Passes(XRay(Friday, 1, 1) with { On = When(Friday, 18, minute) }));

    [Fact]
    public void Only_sealed_units_that_went_through_are_listed()
    {
        var stock = (SmallProduction.Of(First) with { StockLog = [XRay(Friday, 2, 1, 3)] }).Stock();

        Assert.Equal((("N250-A", 3), 2), Assert.Single(stock.XRayedUnits.Select(u => (u.Key, u.Value))));
        Assert.Equal((2, 0), (stock.XRaysOf(SmallProduction.Lot, 3), stock.XRaysOf(SmallProduction.Lot, 4)));
    }

    [Fact]
    public void The_film_of_a_roll_without_stock_has_no_passes()
    {
        var production = SmallProduction.Of(Of(At(100)).FromUnit(9)) with { StockLog = [XRay(Friday, 1)] };

        Assert.Equal(0, production.Stock().XRaysOf(production.Rolls.Single()));
    }
}
