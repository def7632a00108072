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

    // 60 ft off leave 40 ft.
    [Theory]
    [InlineData(39, 39, null)]
    [InlineData(40, 0, StockFault.MoreThanInIt)]
    public void Not_even_all_that_the_first_re_can_left_can_be_thrown_away(int feet, int frames, StockFault? fault) =>
        Assert.Equal([null, fault], Faults(With([], Units(Off(At(60), Friday), 2), Units(Off(At(feet, frames), Saturday), 2))));

    [Fact]
    public void A_unit_that_goes_after_a_re_can_takes_only_what_is_in_it()
    {
        var lot = With([], Units(Off(At(3), Friday), 2), Units(new StockSentAway(Nowhere) { On = When(Saturday) }, 2)).OnlyLot();

        Assert.Equal((At(97), At(3)), (lot.SentAway, lot.Lost));
    }

    [Fact]
    public void An_impossible_entry_throws_nothing_away()
    {
        var lot = With([], Units(Off(At(120), Friday), 2), Units(new StockSentAway(Nowhere) { On = When(Saturday) }, 2)).OnlyLot();

        Assert.Equal((At(100), At(0)), (lot.SentAway, lot.Lost));
    }

    // At one and the same moment the roll is believed: an assistant had the can in hand.
    [Fact]
    public void Stock_cannot_be_lost_at_the_moment_it_is_loaded() =>
        Assert.Equal([StockFault.Loaded], Faults(With([Shot], Units(new StockLost(Nowhere) { On = When(Saturday, 9) }, 1))));

    [Fact]
    public void What_was_loaded_had_not_gone_and_cannot_come_back_afterwards() =>
        Assert.Equal(
            [StockFault.LoadedAfterwards, StockFault.Loaded],
            Faults(
                With([Shot], Units(new StockLost(Nowhere) { On = When(Friday) }, 1), Units(new StockCame(Nowhere) { On = When(Sunday) }, 1))
            )
        );

    [Fact]
    public void A_unit_that_came_cannot_come_again_but_can_be_lost() =>
        Assert.Equal(
            [null, StockFault.HereAlready, null],
            Faults(
                With(
                    [],
                    Units(new StockCame(Nowhere) { On = When(Friday) }, 5),
                    Units(new StockCame(Nowhere) { On = When(Saturday) }, 5),
                    Units(new StockLost(Nowhere) { On = When(Sunday) }, 5)
                )
            )
        );

    // R01 is unloaded at 18:00.
    [Theory]
    [InlineData(17, 59, StockFault.NeverHere)]
    [InlineData(18, 0, null)]
    public void A_short_end_can_be_lost_from_the_moment_that_its_roll_is_out(int hour, int minute, StockFault? fault) =>
        Assert.Equal([fault], Faults(With([Shot], End(new StockLost(Nowhere) { On = When(Saturday, hour, minute) }))));

    [Fact]
    public void A_short_end_that_never_was_cannot_come_back()
    {
        var shotOut = Of(At(100)).FromUnit(1).LoadedOn(Friday).Take("7B/1", At(100)).Unload().OutOn(Friday);

        Assert.Equal([StockFault.NeverHere], Faults(With([shotOut], End(new StockCame(Nowhere) { On = When(Sunday) }))));
    }

    // Lent on Friday, said to be lost on Saturday (it was not here to be lost), back on Sunday, lost on Monday.
    [Fact]
    public void What_went_and_came_back_lasts_no_longer_and_a_later_loss_does()
    {
        var moves = With(
            [],
            Units(new StockSentAway(Nowhere) { On = When(Friday) }, 2),
            Units(new StockLost(Nowhere) { On = When(Saturday) }, 2),
            Units(new StockCame(Nowhere) { On = When(Sunday) }, 2),
            Units(new StockLost(Nowhere) { On = When(Monday) }, 2)
        )
            .Stock()
            .Moves;

        Assert.Equal([(true, false), (false, true), (true, false), (true, true)], moves.Select(m => (m.Counts, m.Lasts)));
    }

    [Fact]
    public void A_unit_that_came_late_and_is_still_here_lasts() =>
        Assert.True(Assert.Single(With([], Units(new StockCame(Nowhere) { On = When(Friday) }, 5)).Stock().Moves).Lasts);

    [Fact]
    public void A_re_can_lasts_when_its_can_went_and_came_back()
    {
        var moves = With(
            [],
            Units(Off(At(3), Friday), 2),
            Units(new StockLost(Nowhere) { On = When(Saturday) }, 2),
            Units(new StockCame(Nowhere) { On = When(Sunday) }, 2)
        )
            .Stock()
            .Moves;

        Assert.Equal([true, false, false], moves.Select(m => m.Lasts));
    }

    [Fact]
    public void Each_lot_numbers_its_own_units()
    {
        var production = With(
            [],
            Units(new StockLost(Nowhere) { On = When(Friday) }, 2),
            Units(new StockSentAway(Nowhere) { On = When(Friday) }, 3),
            UnitsOf("BW-1", Off(At(3), Friday), 2)
        ) with
        {
            Lots = [SmallProduction.Lot, SmallProduction.Lot with { Name = Written("BW-1") }],
        };

        Assert.Equal(
            [(1, 1, At(200)), (0, 0, At(397))],
            production.Stock().Lots.Select(l => (l.UnitsLost, l.UnitsSentAway, l.OnHand))
        );
    }

    [Fact]
    public void Of_two_lots_with_one_name_the_log_means_the_first()
    {
        var lots = (
            With([], Units(new StockLost(Nowhere) { On = When(Friday) }, 2)) with
            {
                Lots = [SmallProduction.Lot, SmallProduction.Lot with { Units = Written(3) }],
            }
        )
            .Stock()
            .Lots;

        Assert.Equal([(1, 3), (0, 3)], lots.Select(l => (l.UnitsLost, l.UnitsUnopened)));
    }

    [Fact]
    public void Cans_and_the_moves_of_one_entry_are_in_the_order_of_their_numbers()
    {
        var stock = With(
            [],
            Units(new StockLost(Nowhere) { On = When(Saturday) }, 4, 2),
            Units(new StockCame(Nowhere) { On = When(Friday) }, 6, 5)
        )
            .Stock();

        Assert.Equal([2, 4, 5, 6], stock.Cans.Select(c => c.Unit));
        Assert.Equal([("lost", 2), ("lost", 4), ("came", 5), ("came", 6)], stock.Moves.Select(m => (m.Entry.Word, m.Unit)));
    }

    static StockRecanned Off(Film.Footage off, DateOnly day) => new(Nowhere) { On = When(day), Off = Written(off) };
}
