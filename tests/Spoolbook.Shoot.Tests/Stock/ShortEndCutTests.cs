using Spoolbook.Film;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Strips;
using Spoolbook.Shoot.Tests.Sheets;
using static Spoolbook.Shoot.Tests.Sheets.Sheet;
using static Spoolbook.Shoot.Tests.Stock.StockSheets;

namespace Spoolbook.Shoot.Tests.Stock;

public class ShortEndCutTests
{
    static readonly Place Nowhere = SmallProduction.Lot.Place;

    // 38 ft 28 frames are left of R01.
    static readonly Sheet Parent = Of(At(100))
        .FromUnit(1)
        .LoadedOn(Friday)
        .Head(At(4))
        .Take("7B/1", At(59, 12))
        .Unload(At(2))
        .OutOn(Friday);

    static Sheet Piece(string name, Footage? length, DateOnly day)
    {
        var sheet = Of(length ?? At(1), name).ShortEndOf("R01").LoadedOn(day).Take("8A/1", At(1)).Unload(left: Remainder.Thrown).OutOn(day);
        return length is null ? sheet.AsTheCanSays() : sheet;
    }

    static Production Shoot(StockEntry entry, params Sheet[] pieces) => Shoot([entry], pieces);

    static Production Shoot(StockEntry[] log, params Sheet[] pieces) =>
        With([Parent, .. pieces], [.. log.Select(e => End(e, piece: e.Piece?.Value))]);

    static StockRecanned Off(Footage off, DateOnly day) => new(Nowhere) { On = When(day), Off = Written(off) };

    static StockSplit Split(DateOnly day, params Footage[] into) => new(Nowhere) { On = When(day), Into = [.. into.Select(Written)] };

    static (int Piece, Footage Length, string? UsedAs, Footage OnHand)[] Pieces(StockBook stock) =>
        [.. stock.ShortEnds.Where(e => e.Parent.Name.Value == "R01").Select(e => (e.Piece, e.Length, e.UsedBy?.Name.Value, e.OnHand))];

    [Fact]
    public void Two_rolls_come_from_one_short_end()
    {
        var stock = Shoot([], Piece("R02", At(20), Saturday), Piece("R03", At(18, 28), Sunday)).Stock();

        Assert.Empty(stock.Unplaced);
        Assert.Equal((At(0), At(0)), (stock.Lots.Single().Remeasured, stock.Lots.Single().ShortEnds));
        Assert.Equal([(1, At(20), "R02", At(0)), (2, At(18, 28), "R03", At(0))], Pieces(stock));
    }

    [Fact]
    public void What_was_not_loaded_stays_on_hand()
    {
        var stock = Shoot([], Piece("R02", At(20), Saturday)).Stock();

        Assert.Equal([(1, At(20), "R02", At(0)), (2, At(18, 28), null, At(18, 28))], Pieces(stock));
        Assert.Equal((At(18, 28), 1), (stock.Lots.Single().ShortEnds, stock.Lots.Single().ShortEndCans));
    }

    // Six feet are what a short end may be out (common practice).
    [Fact]
    public void A_roll_a_little_shorter_than_the_short_end_was_measured_again()
    {
        var stock = Shoot([], Piece("R02", At(35), Saturday)).Stock();

        Assert.Equal([(1, At(38, 28), "R02", At(0))], Pieces(stock));
        Assert.Equal(new Footage(-148), stock.Lots.Single().Remeasured);
    }

    [Fact]
    public void A_second_piece_without_a_length_is_the_rest()
    {
        var production = Shoot([], Piece("R02", At(20), Saturday), Piece("R03", null, Sunday));

        Assert.Equal(At(18, 28), BookKeeper.Keep(production).Rolls[^1].Strip.Loaded);
        Assert.Equal([(1, At(20), "R02", At(0)), (2, At(18, 28), "R03", At(0))], Pieces(production.Stock()));
    }

    [Fact]
    public void A_roll_for_which_nothing_is_left_has_no_stock() =>
        Assert.Equal(
            "R03",
            Assert.Single(Shoot([], Piece("R02", At(38, 28), Saturday), Piece("R03", At(10), Sunday)).Stock().Unplaced).Name.Value
        );

    [Fact]
    public void A_split_in_the_stock_log_makes_a_can_of_each_piece()
    {
        var stock = Shoot(Split(Friday, At(10), At(28, 28))).Stock();

        Assert.Equal([(1, At(10), null, At(10)), (2, At(28, 28), null, At(28, 28))], Pieces(stock));
        Assert.Equal((At(38, 28), 2), (stock.Lots.Single().ShortEnds, stock.Lots.Single().ShortEndCans));
    }

    [Fact]
    public void A_roll_takes_the_piece_nearest_to_its_length() =>
        Assert.Equal(
            [(1, At(10), null, At(10)), (2, At(28, 28), "R02", At(0))],
            Pieces(Shoot(Split(Friday, At(10), At(28, 28)), Piece("R02", At(28), Saturday)).Stock())
        );

    [Fact]
    public void What_a_split_does_not_name_is_one_more_piece() =>
        Assert.Equal([(1, At(20), null, At(20)), (2, At(18, 28), null, At(18, 28))], Pieces(Shoot(Split(Friday, At(20))).Stock()));

    [Fact]
    public void A_foot_lost_in_the_split_is_lost()
    {
        var lot = Shoot(Split(Friday, At(20), At(17, 28))).OnlyLot();

        Assert.Equal((At(1), At(37, 28)), (lot.Lost, lot.ShortEnds));
    }

    [Fact]
    public void Pieces_longer_than_the_short_end_cannot_be_cut()
    {
        var stock = Shoot(Split(Friday, At(20), At(30))).Stock();

        Assert.Equal(StockFault.MoreThanInIt, Assert.Single(stock.Moves).Fault);
        Assert.Equal([(1, At(38, 28), null, At(38, 28))], Pieces(stock));
    }

    [Fact]
    public void One_piece_can_be_lost_and_the_other_kept()
    {
        var production = Shoot(Split(Friday, At(10), At(28, 28)));
        var lost = new StockLost(Nowhere)
        {
            On = When(Sunday),
            ShortEndOf = Written("R01"),
            Piece = Written(1),
        };
        var lot = (production with { StockLog = production.StockLog.Add(lost) }).OnlyLot();

        Assert.Equal((At(10), At(28, 28)), (lot.Lost, lot.ShortEnds));
    }

    // 1 ft 20 frames that nobody mentions.
    [Fact]
    public void A_foot_left_over_that_nobody_mentions_is_no_short_end()
    {
        var sheet = Of(At(100)).FromUnit(1).Head(At(4)).Take("7B/1", At(96, 20)).Unload(At(2));

        Assert.Equal(At(1, 20), sheet.Tally().WastedBy(WasteCause.End));
        Assert.Empty(SmallProduction.Of(sheet).Stock().ShortEnds);
    }

    [Fact]
    public void A_foot_that_was_kept_or_loaded_again_is_a_short_end()
    {
        var sheet = Of(At(100)).FromUnit(1).Head(At(4)).Take("7B/1", At(96, 20));

        Assert.Equal(At(1, 20), sheet.Unload(At(2), Remainder.Kept).Tally().ShortEnd);
        Assert.Equal(
            At(1, 20),
            BookKeeper.Keep(SmallProduction.Of(sheet.Unload(At(2)), Piece("R02", At(1), Sunday))).Rolls[0].Tally.ShortEnd
        );
    }

    // Six feet are what a short end may be out.
    [Fact]
    public void Six_feet_too_few_are_measured_again_and_one_frame_more_is_a_piece()
    {
        Assert.Equal([(1, At(38, 28), "R02", At(0))], Pieces(Shoot([], Piece("R02", At(32, 28), Saturday)).Stock()));
        Assert.Equal(
            [(1, At(32, 27), "R02", At(0)), (2, At(6, 1), null, At(6, 1))],
            Pieces(Shoot([], Piece("R02", At(32, 27), Saturday)).Stock())
        );
    }

    // 38+28 less 3 ft.
    [Fact]
    public void A_roll_without_a_length_holds_what_the_re_can_left_in_the_short_end()
    {
        var production = Shoot(Off(At(3), Friday), Piece("R02", null, Saturday));

        Assert.Equal(At(35, 28), BookKeeper.Keep(production).Rolls[^1].Strip.Loaded);
        Assert.Equal((At(3), At(0)), (production.OnlyLot().Lost, production.OnlyLot().Remeasured));
    }

    [Fact]
    public void A_roll_as_long_as_what_the_re_can_left_leaves_nothing_for_the_next()
    {
        var stock = Shoot(Off(At(3), Friday), Piece("R02", At(35, 28), Saturday), Piece("R03", At(3), Sunday)).Stock();

        Assert.Equal([(1, At(38, 28), "R02", At(0))], Pieces(stock));
        Assert.Equal("R03", Assert.Single(stock.Unplaced).Name.Value);
    }

    [Fact]
    public void A_roll_for_shooting_is_cut_before_one_for_practice_that_was_loaded_earlier() =>
        Assert.Equal(
            [(1, At(30), "R02", At(0)), (2, At(8, 28), "P1", At(0))],
            Pieces(Shoot([], Piece("P1", At(30), Saturday).ForPractice(), Piece("R02", At(30), Sunday)).Stock())
        );

    [Fact]
    public void Of_two_rolls_loaded_at_one_time_the_first_by_name_is_cut_first() =>
        Assert.Equal(
            [(1, At(20), "R02", At(0)), (2, At(18, 28), "R03", At(0))],
            Pieces(Shoot([], Piece("R03", At(18, 28), Saturday), Piece("R02", At(20), Saturday)).Stock())
        );

    // Of 38+28, 32+28 are named: six feet over are lost in the split. Of one frame less, 6+01 over is one more piece.
    [Fact]
    public void Six_feet_that_a_split_does_not_name_are_lost_and_one_frame_more_is_a_piece()
    {
        var lost = Shoot(Split(Friday, At(10), At(22, 28)));
        Assert.Equal([At(10), At(22, 28)], lost.Stock().ShortEnds.Select(e => e.OnHand));
        Assert.Equal(At(6), lost.OnlyLot().Lost);

        var kept = Shoot(Split(Friday, At(10), At(22, 27)));
        Assert.Equal([At(10), At(22, 27), At(6, 1)], kept.Stock().ShortEnds.Select(e => e.OnHand));
        Assert.Equal(At(0), kept.OnlyLot().Lost);
    }

    // 38+28 less 4 ft are 34+28: two pieces, and nothing over.
    [Fact]
    public void What_was_thrown_away_before_a_split_was_on_the_last_piece()
    {
        var production = Shoot([Off(At(4), Friday), Split(Saturday, At(10), At(24, 28))]);

        Assert.Equal([(1, At(10), null, At(10)), (2, At(28, 28), null, At(24, 28))], Pieces(production.Stock()));
        Assert.Equal(At(4), production.OnlyLot().Lost);
    }

    [Fact]
    public void A_foot_thrown_away_after_a_split_is_thrown_away_once()
    {
        var production = Shoot([Split(Friday, At(10), At(28, 28)), Off(At(1), Saturday)]);

        Assert.Equal([("split", 2), ("recanned", 2)], production.Stock().Moves.Select(m => (m.Entry.Word, m.Piece ?? 0)));
        Assert.Equal([At(10), At(27, 28)], production.Stock().ShortEnds.Select(e => e.OnHand));
        Assert.Equal(At(1), production.OnlyLot().Lost);
    }

    [Fact]
    public void Each_roll_has_a_piece_of_its_own_where_two_are_alike() =>
        Assert.Equal(
            [(1, At(15), "R02", At(0)), (2, At(15), "R03", At(0)), (3, At(8, 28), null, At(8, 28))],
            Pieces(Shoot(Split(Friday, At(15), At(15)), Piece("R02", At(15), Saturday), Piece("R03", At(15), Sunday)).Stock())
        );

    [Fact]
    public void A_third_roll_has_no_stock_where_a_short_end_was_split_in_two()
    {
        var production = Shoot(
            Split(Friday, At(10), At(28, 28)),
            Piece("R02", At(10), Saturday),
            Piece("R03", At(28, 28), Sunday),
            Piece("R04", At(5), Monday)
        );

        Assert.Equal("R04", Assert.Single(production.Stock().Unplaced).Name.Value);
    }

    // 38+28 less 20 ft, and less the foot lost in the split.
    [Fact]
    public void A_roll_without_a_length_holds_what_the_split_left_in_its_piece()
    {
        var production = Shoot(Split(Friday, At(20), At(17, 28)), Piece("R02", At(20), Saturday), Piece("R03", null, Sunday));

        Assert.Equal(At(17, 28), BookKeeper.Keep(production).Rolls[^1].Strip.Loaded);
        Assert.Equal(At(0), production.OnlyLot().Remeasured);
    }

    [Fact]
    public void A_piece_that_goes_after_a_foot_was_lost_in_the_split_takes_only_what_is_in_it()
    {
        var sent = new StockSentAway(Nowhere) { On = When(Sunday), Piece = Written(2) };
        var lot = Shoot([Split(Friday, At(20), At(17, 28)), sent]).OnlyLot();

        Assert.Equal((At(17, 28), At(1), At(20)), (lot.SentAway, lot.Lost, lot.ShortEnds));
    }

    [Fact]
    public void A_short_end_lost_on_the_day_it_was_split_is_lost_with_all_its_pieces()
    {
        var production = Shoot([Split(Friday, At(10), At(28, 28)), new StockLost(Nowhere) { On = When(Friday) }]);

        Assert.Equal((At(38, 28), At(0)), (production.OnlyLot().Lost, production.OnlyLot().ShortEnds));
        Assert.Equal([("split", 2), ("lost", 1), ("lost", 2)], production.Stock().Moves.Select(m => (m.Entry.Word, m.Piece ?? 0)));
    }

    [Fact]
    public void A_short_end_that_was_away_before_it_was_split_was_away_with_all_its_film()
    {
        var stock = Shoot([
                new StockSentAway(Nowhere) { On = When(Friday, 20) },
                new StockCame(Nowhere) { On = When(Saturday) },
                Split(Sunday, At(10), At(28, 28)),
            ])
            .Stock();

        Assert.Equal([(Friday, At(300)), (Saturday, At(338, 28)), (Sunday, At(338, 28))], stock.Days.Select(d => (d.On, d.OnHand)));
        Assert.Equal((At(38, 28), At(38, 28)), (stock.Lots.Single().SentAway, stock.Lots.Single().Came));
    }

    [Fact]
    public void A_short_end_that_a_roll_was_cut_from_without_a_split_was_away_with_all_its_film()
    {
        var stock = Shoot(
                [new StockSentAway(Nowhere) { On = When(Friday, 20) }, new StockCame(Nowhere) { On = When(Saturday) }],
                Piece("R02", At(20), Sunday)
            )
            .Stock();

        Assert.Equal([(Friday, At(300)), (Saturday, At(338, 28)), (Sunday, At(318, 28))], stock.Days.Select(d => (d.On, d.OnHand)));
        Assert.Equal((At(38, 28), At(38, 28)), (stock.Lots.Single().SentAway, stock.Lots.Single().Came));
        Assert.All(stock.Moves, move => Assert.Null(move.Fault));
    }

    [Fact]
    public void A_roll_cut_from_a_short_end_that_was_away_was_there_and_the_rest_is_away()
    {
        var stock = Shoot([new StockSentAway(Nowhere) { On = When(Friday, 20) }], Piece("R02", At(20), Sunday)).Stock();

        Assert.Equal([(1, (StockFault?)StockFault.LoadedAfterwards), (2, null)], stock.Moves.Select(m => (m.Piece ?? 0, m.Fault)));
        Assert.Equal((At(18, 28), At(0)), (stock.Lots.Single().SentAway, stock.Lots.Single().ShortEnds));
    }

    [Fact]
    public void What_happens_to_the_rest_of_a_short_end_is_no_fault_of_a_roll_cut_from_it_before()
    {
        var stock = Shoot([new StockLost(Nowhere) { On = When(Monday) }], Piece("R02", At(20), Sunday)).Stock();

        Assert.Equal([(2, (StockFault?)null)], stock.Moves.Select(m => (m.Piece ?? 0, m.Fault)));
        Assert.Equal(At(18, 28), stock.Lots.Single().Lost);
    }

    [Fact]
    public void A_short_end_is_split_once() =>
        Assert.Equal([null, StockFault.SplitAlready], Faults(Shoot([Split(Friday, At(20)), Split(Saturday, At(10), At(10))])));

    [Theory]
    [InlineData]
    [InlineData(10, 0)]
    public void A_split_into_nothing_is_no_split(params int[] feet)
    {
        var stock = Shoot(Split(Friday, [.. feet.Select(f => At(f))])).Stock();

        Assert.Equal(StockFault.MoreThanInIt, Assert.Single(stock.Moves).Fault);
        Assert.Equal([(1, At(38, 28), null, At(38, 28))], Pieces(stock));
    }

    [Fact]
    public void A_whole_short_end_has_no_number_and_its_pieces_have()
    {
        Assert.Equal(["R01-SE"], Shoot([]).Stock().ShortEnds.Select(e => e.Name));
        Assert.Equal(["R01-SE1", "R01-SE2"], Shoot(Split(Friday, At(10), At(28, 28))).Stock().ShortEnds.Select(e => e.Name));
    }

    // R02 is loaded at 9:00 on Saturday, the rest is cut at that time, and R03 is loaded from it on Sunday.
    [Fact]
    public void A_piece_loaded_by_the_time_of_the_split_is_none_of_what_it_was_cut_into()
    {
        var split = Split(Saturday, At(10), At(8, 28)) with { On = When(Saturday, 9) };
        var stock = Shoot(split, Piece("R02", At(20), Saturday), Piece("R03", At(10), Sunday)).Stock();

        Assert.Equal(["R01-SE2", "R01-SE3"], stock.CutInto(Assert.Single(stock.Moves)).Select(e => e.Name));
    }

    [Fact]
    public void A_unit_is_cut_into_no_short_ends()
    {
        var stock = With([Parent], Units(Off(At(3), Friday), 2)).Stock();

        Assert.Empty(stock.CutInto(Assert.Single(stock.Moves)));
    }

    [Fact]
    public void A_short_end_has_its_length_even_where_its_sheet_comes_before_its_parent_s()
    {
        var again = Of(At(1), "R02").AsTheCanSays().ShortEndOf("R01").LoadedOn(Saturday).Take("8A/1", At(20)).Unload().OutOn(Saturday);
        var third = Of(At(1), "R03").AsTheCanSays().ShortEndOf("R02").LoadedOn(Sunday);

        // 38+28 left of R01, less 20 ft.
        Assert.Equal(
            [("R03", At(18, 28)), ("R02", At(38, 28)), ("R01", At(100))],
            BookKeeper.Keep(SmallProduction.Of(third, again, Parent)).Rolls.Select(r => (r.Roll.Name.Value, r.Strip.Loaded))
        );
    }

    // R02 takes 20 ft of 38+28: 18+28 are more than the house's six feet, and less than a production's twenty.
    [Fact]
    public void A_production_may_say_how_much_of_a_short_end_is_too_little_for_a_piece()
    {
        var production = Shoot([], Piece("R02", At(20), Saturday));
        var book = BookKeeper.Keep(production, new BookSlack { ShortEnd = At(20) });

        Assert.Equal([(1, At(38, 28), "R02", At(0))], Pieces(StockBook.Keep(book)));
    }

    [Fact]
    public void A_production_may_say_how_much_at_the_end_of_a_roll_is_too_little_for_a_short_end()
    {
        // 3+20 that nobody mentions.
        var production = SmallProduction.Of(Of(At(100)).FromUnit(1).Head(At(4)).Take("7B/1", At(94, 20)).Unload(At(2)));

        Assert.Equal(At(3, 20), BookKeeper.Keep(production).Total.ShortEnd);
        Assert.Equal(At(0), BookKeeper.Keep(production, new BookSlack { Leftover = At(4) }).Total.ShortEnd);
    }

    // The end of R01 is opened at 20:00 on Friday and loses 3 ft; R09 loses 5 ft, and 50 ft cannot be thrown away.
    [Fact]
    public void The_film_in_a_short_end_is_less_from_the_moment_an_end_of_it_was_thrown_away()
    {
        var other = new Sheet(Parent.FromUnit(2).Roll with { Name = Written("R09") });
        var stock = With(
                [Parent, other],
                End(Off(At(3), Friday) with { On = When(Friday, 20) }),
                End(Off(At(50), Saturday)),
                End(Off(At(5), Friday), "R09"),
                End(new StockSentAway(Nowhere) { On = When(Sunday) })
            )
            .Stock();
        var end = stock.PiecesOf(stock.Loads[0].Roll).Single();

        Assert.Equal(At(38, 28), stock.FilmIn(end, Friday.ToDateTime(new TimeOnly(19, 59))));
        Assert.Equal(At(35, 28), stock.FilmIn(end, Friday.ToDateTime(new TimeOnly(20, 0))));
        Assert.Equal(At(35, 28), stock.FilmIn(end, DateTime.MaxValue));
        Assert.Equal(["recanned", "recanned", "sent-away"], stock.MovesOf(end).Select(m => m.Entry.Word));
    }

    [Fact]
    public void A_short_end_that_came_back_is_not_away_and_one_lost_after_it_is()
    {
        StockEntry[] lent = [new StockSentAway(Nowhere) { On = When(Saturday) }, new StockCame(Nowhere) { On = When(Sunday) }];
        static string? WentBy(params StockEntry[] log)
        {
            var stock = Shoot(log).Stock();
            return stock.WentAway(stock.ShortEnds.Single())?.Entry.Word;
        }

        Assert.Null(WentBy());
        Assert.Null(WentBy(Off(At(3), Saturday)));
        Assert.Null(WentBy(lent));
        Assert.Equal("lost", WentBy([.. lent, new StockLost(Nowhere) { On = When(Monday) }]));

        // It cannot be damaged here once it was sent away.
        Assert.Equal("sent-away", WentBy(lent[0], new StockDamaged(Nowhere) { On = When(Sunday) }));
    }

    [Fact]
    public void A_roll_from_a_whole_unit_was_loaded_from_no_short_end()
    {
        var stock = Shoot([], Piece("R02", At(20), Saturday)).Stock();

        Assert.Equal([null, "R01-SE1"], stock.Loads.Select(l => stock.ShortEndIn(l.Roll)?.Name));
    }
}
