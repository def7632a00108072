using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Tests.Sheets;
using static Spoolbook.Shoot.Tests.Sheets.Sheet;
using static Spoolbook.Shoot.Tests.Stock.StockSheets;

namespace Spoolbook.Shoot.Tests.Stock;

public class StockLogTests
{
    static readonly Sheet Shot = Of(At(100))
        .AsTheCanSays()
        .FromUnit(1)
        .LoadedOn(Saturday)
        .Head(At(4))
        .Take("7B/1", At(60))
        .Unload(At(2))
        .OutOn(Saturday);

    static readonly Place Nowhere = SmallProduction.Lot.Place;

    [Fact]
    public void A_unit_sent_away_is_not_on_hand_from_that_evening_on()
    {
        var stock = With([Shot], Units(new StockSentAway(Nowhere) { On = When(Sunday) }, 4)).Stock();
        Assert.Equal((1, At(100)), (stock.Lots.Single().UnitsSentAway, stock.Lots.Single().SentAway));
        Assert.Equal([(Saturday, At(338)), (Sunday, At(238))], stock.Days.Select(d => (d.On, d.OnHand)));
    }

    [Fact]
    public void A_unit_that_comes_later_has_a_number_of_its_own_and_can_be_loaded()
    {
        var extra = Of(At(100), "R02").AsTheCanSays().FromUnit(5).LoadedOn(Sunday).Take("8A/1", At(100)).Unload().OutOn(Sunday);
        var lot = With([Shot, extra], Units(new StockCame(Nowhere) { On = When(Sunday) }, 5, 6)).OnlyLot();
        Assert.Equal((4, 2, 2, 4), (lot.UnitsReceived, lot.UnitsCame, lot.UnitsLoaded, lot.UnitsUnopened));
        Assert.Equal(At(200), lot.Came);
    }

    [Fact]
    public void What_was_lost_and_is_found_is_on_hand_again()
    {
        var lot = With([], Units(new StockLost(Nowhere) { On = When(Friday) }, 2), Units(new StockCame(Nowhere) { On = When(Saturday) }, 2))
            .OnlyLot();
        Assert.Equal((4, At(400)), (lot.UnitsUnopened, lot.OnHand));
    }

    [Fact]
    public void A_short_end_can_be_damaged_too()
    {
        var stock = With([Shot], new StockDamaged(Nowhere) { On = When(Sunday), ShortEndOf = Written("R01") }).Stock();
        Assert.Equal((At(38), At(0), 0), (stock.Lots.Single().Lost, stock.Lots.Single().ShortEnds, stock.Lots.Single().ShortEndCans));
        Assert.Equal(At(300), stock.OnHand);
    }

    [Fact]
    public void A_unit_canned_again_is_shorter_by_the_end_thrown_away()
    {
        var later = Of(At(100), "R02").AsTheCanSays().FromUnit(2).LoadedOn(Sunday).Take("8A/1", At(50)).Unload().OutOn(Sunday);
        var production = With([later], Units(new StockRecanned(Nowhere) { On = When(Friday), Off = Written(At(3)) }, 2));
        Assert.Equal(At(97), BookKeeper.Keep(production).Rolls.Single().Strip.Loaded);
        Assert.Equal((At(3), At(0)), (production.OnlyLot().Lost, production.OnlyLot().Remeasured));
    }

    [Fact]
    public void A_roll_on_which_nothing_was_shot_is_a_re_can()
    {
        var stock = SmallProduction
            .Of(
                Of(At(100)).AsTheCanSays().FromUnit(1).Head(At(4)).Unload(),
                Of(At(100), "R02").AsTheCanSays().FromUnit(2).Take("7B/1", At(60)).Unload()
            )
            .Stock();
        Assert.Equal([true, false], stock.ShortEnds.Select(e => e.IsRecan));
    }

    [Fact]
    public void Stock_cannot_be_sent_away_twice() =>
        Assert.Equal(
            [null, StockFault.SentAway],
            Faults(
                With(
                    [],
                    Units(new StockSentAway(Nowhere) { On = When(Friday) }, 4),
                    Units(new StockSentAway(Nowhere) { On = When(Saturday) }, 4)
                )
            )
        );

    [Fact]
    public void Stock_cannot_be_lost_that_is_in_the_camera() =>
        Assert.Equal([StockFault.Loaded], Faults(With([Shot], Units(new StockLost(Nowhere) { On = When(Saturday, 12) }, 1))));

    [Fact]
    public void A_loss_does_not_count_when_the_can_was_loaded_afterwards()
    {
        var production = With([Shot], Units(new StockLost(Nowhere) { On = When(Friday) }, 1));
        Assert.Equal([StockFault.LoadedAfterwards], Faults(production));
        Assert.Equal((0, 1, At(338)), (production.OnlyLot().UnitsLost, production.OnlyLot().UnitsLoaded, production.OnlyLot().OnHand));
    }

    [Fact]
    public void A_roll_loaded_before_its_film_came_is_believed()
    {
        var early = new Sheet(Shot.Roll with { Unit = Written(5) });
        var production = With([early], Units(new StockCame(Nowhere) { On = When(Sunday) }, 5));
        Assert.Equal([StockFault.LoadedBefore], Faults(production));
        Assert.Equal(Saturday, Assert.Single(production.Stock().Moves).On);
    }

    [Fact]
    public void A_roll_that_leaves_nothing_has_no_short_end_to_lose() =>
        Assert.Equal(
            [StockFault.NeverHere],
            Faults(
                With(
                    [Of(At(100)).FromUnit(1).Take("7B/1", At(100)).Unload()],
                    new StockLost(Nowhere) { On = When(Sunday), ShortEndOf = Written("R01") }
                )
            )
        );

    [Fact]
    public void More_cannot_be_thrown_away_than_was_in_the_can() =>
        Assert.Equal(
            [StockFault.MoreThanInIt],
            Faults(With([], Units(new StockRecanned(Nowhere) { On = When(Friday), Off = Written(At(100)) }, 1)))
        );

    static StockFault?[] Faults(Production production) => [.. production.Stock().Moves.Select(m => m.Fault)];

    static Production With(Sheet[] sheets, params StockEntry[] log) => SmallProduction.Of(sheets) with { StockLog = [.. log] };

    static StockEntry Units(StockEntry entry, params int[] units) =>
        entry with
        {
            Lot = Written("N250-A"),
            Units = [.. units.Select(Written)],
        };

    static Located<StockTime> When(DateOnly day, int? hour = null) =>
        Written(new StockTime(day, hour is { } at ? new TimeOnly(at, 0) : null));
}
