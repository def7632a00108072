using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Tests.Sheets;
using static Spoolbook.Shoot.Tests.Sheets.Sheet;
using static Spoolbook.Shoot.Tests.Stock.StockSheets;

namespace Spoolbook.Shoot.Tests.Stock;

public class StockBookTests
{
    static readonly Place Nowhere = SmallProduction.Lot.Place;

    static readonly Sheet Shot = Of(At(100)).AsTheCanSays().FromUnit(1).Head(At(4)).Take("7B/1", At(60)).Unload(At(2));

    [Fact]
    public void A_unit_that_was_not_loaded_is_unopened()
    {
        var lot = SmallProduction.Of().OnlyLot();
        Assert.Equal((4, 4, 0), (lot.UnitsReceived, lot.UnitsUnopened, lot.UnitsLoaded));
        Assert.Equal(At(400), lot.OnHand);
    }

    [Fact]
    public void A_short_end_goes_back_on_hand()
    {
        var lot = SmallProduction.Of(Shot).OnlyLot();
        Assert.Equal(3, lot.UnitsUnopened);
        Assert.Equal((At(38), 1), (lot.ShortEnds, lot.ShortEndCans));
        Assert.Equal(At(338), lot.OnHand);
        Assert.Equal(At(62), lot.Exposed);
    }

    [Fact]
    public void A_short_end_loaded_again_is_no_second_unit_and_no_longer_on_hand()
    {
        var again = Of(At(38), "R02").AsTheCanSays().ShortEndOf("R01").LoadedOn(Sunday, 17).Take("7C/1", At(38)).Unload();
        var stock = SmallProduction.Of(Shot, again).Stock();
        var lot = stock.Lots.Single();
        Assert.Equal((1, 3), (lot.UnitsLoaded, lot.UnitsUnopened));
        Assert.Equal((At(0), At(300)), (lot.ShortEnds, lot.OnHand));
        var end = Assert.Single(stock.ShortEnds);
        Assert.Equal(("R01", At(38), "R02"), (end.Parent.Name.Value, end.Length, end.UsedBy?.Name.Value));
    }

    [Fact]
    public void A_can_that_holds_less_than_it_says_is_remeasured_and_the_lot_still_balances()
    {
        var again = Of(At(35), "R02").ShortEndOf("R01").LoadedOn(Sunday, 17).Take("7C/1", At(35)).Unload();
        var lot = SmallProduction.Of(Shot, again).OnlyLot();
        Assert.Equal(At(-3), lot.Remeasured);
        Assert.Equal(lot.Received + lot.Remeasured, lot.Unopened + lot.Exposed);
    }

    [Fact]
    public void What_is_thrown_away_is_waste_and_no_short_end()
    {
        var stock = SmallProduction.Of(Of(At(100)).FromUnit(1).Take("7B/1", At(60)).Unload(left: Remainder.Thrown)).Stock();
        Assert.Empty(stock.ShortEnds);
        Assert.Equal(At(300), stock.OnHand);
    }

    [Fact]
    public void Film_in_the_camera_is_left_but_not_on_hand()
    {
        var stock = SmallProduction.Of(Of(At(100)).FromUnit(2).Take("7B/1", At(60))).Stock();
        Assert.Equal((At(300), At(340)), (stock.OnHand, stock.Left));
    }

    [Fact]
    public void A_dummy_roll_takes_a_unit_away_and_is_in_no_account()
    {
        var stock = SmallProduction.Of(Shot, Of(At(100), "P1").FromUnit(4).ForPractice().Take("1/1", At(50)).Unload()).Stock();
        var lot = stock.Lots.Single();
        Assert.Equal((1, 1, 2), (lot.UnitsLoaded, lot.UnitsPractised, lot.UnitsUnopened));
        Assert.Equal(At(100), lot.Practice);
        Assert.Equal(At(62), stock.Use.Tally.Exposed);
    }

    [Fact]
    public void One_dummy_spool_is_loaded_many_times()
    {
        var dummy = Of(At(100), "P1").FromUnit(4).ForPractice();
        var lot = SmallProduction.Of(dummy, new Sheet(dummy.Roll with { Name = Written("P2") })).OnlyLot();
        Assert.Equal((1, 3), (lot.UnitsPractised, lot.UnitsUnopened));
    }

    [Fact]
    public void Stock_bought_for_practice_is_counted_apart()
    {
        var small = SmallProduction.Of();
        var practice = SmallProduction.Lot with { Name = Written("DUMMY"), Practice = Written(true), Units = Written(1) };
        var stock = (small with { Lots = [.. small.Lots, practice] }).Stock();
        Assert.Equal(At(400), stock.OnHand);
        Assert.Equal("DUMMY", Assert.Single(stock.Practice).Lot.Name.Value);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(5)]
    [InlineData(0)]
    public void A_roll_whose_unit_is_another_roll_s_or_never_came_is_placed_nowhere(int unit)
    {
        var second = Of(At(100), "R02").FromUnit(unit).LoadedOn(Sunday, 17).Take("7C/1", At(100)).Unload();
        var stock = SmallProduction.Of(Shot, second).Stock();
        Assert.Equal("R02", Assert.Single(stock.Unplaced).Name.Value);
        Assert.Equal(3, stock.Lots.Single().UnitsUnopened);
    }

    [Fact]
    public void Two_rolls_cannot_be_cut_from_one_short_end()
    {
        var again = Of(At(38), "R02").ShortEndOf("R01").LoadedOn(Sunday, 17).Unload();
        var stock = SmallProduction.Of(Shot, again, new Sheet(again.LoadedOn(Sunday, 18).Roll with { Name = Written("R03") })).Stock();
        Assert.Equal("R03", Assert.Single(stock.Unplaced).Name.Value);
    }

    [Fact]
    public void A_roll_that_names_no_unit_takes_one_that_no_other_roll_names()
    {
        var lot = SmallProduction.Of(Of(At(100), "R01").FromUnit(null), Of(At(100), "R02").FromUnit(1)).OnlyLot();
        Assert.Equal((2, 2), (lot.UnitsLoaded, lot.UnitsUnopened));
    }

    // One unit of four is lost by the log, and of another lot the first.
    [Fact]
    public void A_roll_that_names_no_unit_takes_one_that_the_log_does_not_name()
    {
        var production = With(
            [Of(At(100)).FromUnit(null)],
            Units(new StockLost(Nowhere) { On = When(Friday) }, 1),
            UnitsOf("BW-1", new StockLost(Nowhere) { On = When(Friday) }, 2)
        ) with
        {
            Lots = [SmallProduction.Lot, SmallProduction.Lot with { Name = Written("BW-1") }],
        };

        Assert.Equal(2, Assert.Single(production.Stock().Loads).Unit);
    }

    [Fact]
    public void Where_the_log_names_every_unit_rolls_without_a_number_take_the_first_ones_that_are_free()
    {
        var stock = With(
            [Of(At(100)).FromUnit(null), Of(At(100), "R02").FromUnit(null).LoadedOn(Monday)],
            Units(new StockRecanned(Nowhere) { On = When(Friday) }, 4, 3, 2, 1)
        )
            .Stock();

        Assert.Equal([1, 2], stock.Loads.Select(l => l.Unit));
    }

    [Fact]
    public void A_fifth_roll_without_a_number_has_no_stock_in_a_lot_of_four()
    {
        var rolls = Enumerable.Range(1, 5).Select(i => Of(At(100), $"R0{i}").FromUnit(null).LoadedOn(Friday, 8 + i));

        Assert.Equal(["R05"], SmallProduction.Of(rolls).Stock().Unplaced.Select(r => r.Name.Value));
    }

    [Fact]
    public void A_roll_for_shooting_has_its_unit_even_where_a_dummy_was_loaded_from_it_before()
    {
        var stock = SmallProduction.Of(Shot, Of(At(100), "P1").FromUnit(1).ForPractice().LoadedOn(Friday)).Stock();

        Assert.Equal(["R01"], stock.Loads.Select(l => l.Roll.Name.Value));
        Assert.Equal((1, 0), (stock.Lots.Single().UnitsLoaded, stock.Lots.Single().UnitsPractised));
    }

    [Fact]
    public void Loads_are_in_the_order_of_the_rolls_whatever_was_loaded_first() =>
        Assert.Equal(
            ["R01", "R02"],
            SmallProduction.Of(Shot, Of(At(100), "R02").FromUnit(2).LoadedOn(Friday)).Stock().Loads.Select(l => l.Roll.Name.Value)
        );

    // Unit 1 went for good, 2 was shot, 3 was canned again, lent and came back, 5 came later; of 4 more was thrown away than it held.
    [Fact]
    public void Sealed_units_are_listed_by_number_and_those_canned_again_are_counted()
    {
        var lot = With(
            [Of(At(100)).AsTheCanSays().FromUnit(2).LoadedOn(Friday).Take("7B/1", At(60)).Unload().OutOn(Friday)],
            Units(new StockSentAway(Nowhere) { On = When(Friday) }, 1),
            Units(new StockRecanned(Nowhere) { On = When(Friday), Off = Written(At(3)) }, 3),
            Units(new StockSentAway(Nowhere) { On = When(Saturday) }, 3),
            Units(new StockCame(Nowhere) { On = When(Sunday) }, 3, 5),
            Units(new StockRecanned(Nowhere) { On = When(Friday), Off = Written(At(120)) }, 4),
            End(new StockRecanned(Nowhere) { On = When(Saturday), Off = Written(At(1)) })
        )
            .OnlyLot();

        Assert.Equal([3, 4, 5], lot.Sealed.AsEnumerable());
        Assert.Equal((3, 1), (lot.UnitsUnopened, lot.UnitsRecanned));
    }

    [Fact]
    public void A_unit_holds_what_was_bought_less_the_end_thrown_away_from_it_alone()
    {
        var production = With([], Units(new StockRecanned(Nowhere) { On = When(Friday), Off = Written(At(3)) }, 2));
        var (first, second) = (SmallProduction.Lot, SmallProduction.Lot with { Name = Written("BW-1") });
        var stock = (production with { Lots = [first, second] }).Stock();

        Assert.Equal((At(97), At(100), At(100)), (stock.FilmIn(first, 2), stock.FilmIn(first, 3), stock.FilmIn(second, 2)));
    }

    // Of each lot, unit 1 leaves a short end of 38 ft and unit 2 is canned again: 3 of 4 units and 2 of 3 are unopened.
    [Fact]
    public void Two_lots_of_one_stock_are_added_up()
    {
        var production = With(
            [Shot, new Sheet(Shot.FromUnit(1, "N250-B").Roll with { Name = Written("R02") })],
            Units(new StockRecanned(Nowhere) { On = When(Friday) }, 2),
            UnitsOf("N250-B", new StockRecanned(Nowhere) { On = When(Friday) }, 2)
        );
        var second = SmallProduction.Lot with { Name = Written("N250-B"), Units = Written(3) };
        var kind = Assert.Single((production with { Lots = [SmallProduction.Lot, second] }).Stock().Kinds);

        Assert.Equal((5, 2, 2, At(76)), (kind.Unopened, kind.Recanned, kind.ShortEndCans, kind.ShortEnds));
    }
}
