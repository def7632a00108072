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

    static Production Shoot(StockEntry? entry, params Sheet[] pieces) =>
        SmallProduction.Of([Parent, .. pieces]) with
        {
            StockLog = entry is null ? [] : [entry with { ShortEndOf = Written("R01") }],
        };

    static StockSplit Split(DateOnly day, params Footage[] into) => new(Nowhere) { On = When(day), Into = [.. into.Select(Written)] };

    static Located<StockTime> When(DateOnly day) => Written(new StockTime(day, null));

    static (int Piece, Footage Length, string? UsedAs, Footage OnHand)[] Pieces(StockBook stock) =>
        [.. stock.ShortEnds.Where(e => e.Parent.Name.Value == "R01").Select(e => (e.Piece, e.Length, e.UsedBy?.Name.Value, e.OnHand))];

    [Fact]
    public void Two_rolls_come_from_one_short_end()
    {
        var stock = Shoot(null, Piece("R02", At(20), Saturday), Piece("R03", At(18, 28), Sunday)).Stock();

        Assert.Empty(stock.Unplaced);
        Assert.Equal((At(0), At(0)), (stock.Lots.Single().Remeasured, stock.Lots.Single().ShortEnds));
        Assert.Equal([(1, At(20), "R02", At(0)), (2, At(18, 28), "R03", At(0))], Pieces(stock));
    }

    [Fact]
    public void What_was_not_loaded_stays_on_hand()
    {
        var stock = Shoot(null, Piece("R02", At(20), Saturday)).Stock();

        Assert.Equal([(1, At(20), "R02", At(0)), (2, At(18, 28), null, At(18, 28))], Pieces(stock));
        Assert.Equal((At(18, 28), 1), (stock.Lots.Single().ShortEnds, stock.Lots.Single().ShortEndCans));
    }

    // Six feet are what a short end may be out (common practice).
    [Fact]
    public void A_roll_a_little_shorter_than_the_short_end_was_measured_again()
    {
        var stock = Shoot(null, Piece("R02", At(35), Saturday)).Stock();

        Assert.Equal([(1, At(38, 28), "R02", At(0))], Pieces(stock));
        Assert.Equal(new Footage(-148), stock.Lots.Single().Remeasured);
    }

    [Fact]
    public void A_second_piece_without_a_length_is_the_rest()
    {
        var production = Shoot(null, Piece("R02", At(20), Saturday), Piece("R03", null, Sunday));

        Assert.Equal(At(18, 28), BookKeeper.Keep(production).Rolls[^1].Strip.Loaded);
        Assert.Equal([(1, At(20), "R02", At(0)), (2, At(18, 28), "R03", At(0))], Pieces(production.Stock()));
    }

    [Fact]
    public void A_roll_for_which_nothing_is_left_has_no_stock() =>
        Assert.Equal(
            "R03",
            Assert.Single(Shoot(null, Piece("R02", At(38, 28), Saturday), Piece("R03", At(10), Sunday)).Stock().Unplaced).Name.Value
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
}
