using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Tests.Sheets;
using static Spoolbook.Shoot.Tests.Sheets.Sheet;
using static Spoolbook.Shoot.Tests.Stock.StockSheets;

namespace Spoolbook.Shoot.Tests.Stock;

/// <summary>Cans that the stock log names and that never were.</summary>
public class StockStrangerTests
{
    static readonly Place Nowhere = SmallProduction.Lot.Place;

    // Of R01 38 ft are left, and of R02 nothing.
    static readonly Sheet First = Of(At(100)).FromUnit(1).LoadedOn(Friday).Head(At(4)).Take("7B/1", At(60)).Unload(At(2)).OutOn(Friday);
    static readonly Sheet ShotOut = Of(At(100), "R02").FromUnit(2).LoadedOn(Friday).Take("7C/1", At(100)).Unload().OutOn(Friday);
    static readonly Sheet Third = new(First.FromUnit(3).Roll with { Name = Written("R03") });

    static StockXRayed XRay => new(Nowhere) { On = When(Sunday) };

    static (string Word, int Number)[] Strangers(Production production) =>
        [.. production.Stock().Strangers.Select(s => (s.Entry.Word, s.Unit ?? s.Piece ?? 0))];

    [Fact]
    public void The_last_unit_of_a_lot_is_known_and_the_next_number_is_not()
    {
        StockEntry[] kinds = [XRay, new StockIntoCold(Nowhere) { On = When(Sunday) }, new StockOutOfCold(Nowhere) { On = When(Sunday) }];
        var production = With([], [.. kinds.Select(k => Units(k, 2, 4, 5))]);

        Assert.Equal([("x-rayed", 5), ("into-cold", 5), ("out-of-cold", 5)], Strangers(production));
    }

    [Fact]
    public void A_unit_that_was_sent_away_and_never_came_is_an_impossible_move_and_no_stranger()
    {
        var production = With([], Units(new StockSentAway(Nowhere) { On = When(Sunday) }, 9));

        Assert.Empty(Strangers(production));
        Assert.Equal([StockFault.NeverHere], Faults(production));
    }

    // Unit 6 came, and unit 5 of another lot.
    [Fact]
    public void A_unit_is_known_where_it_came_in_its_own_lot()
    {
        var production = With(
            [],
            Units(new StockCame(Nowhere) { On = When(Friday) }, 6),
            UnitsOf("BW-1", new StockCame(Nowhere) { On = When(Friday) }, 5),
            Units(XRay, 5, 6)
        ) with
        {
            Lots = [SmallProduction.Lot, SmallProduction.Lot with { Name = Written("BW-1") }],
        };

        Assert.Equal([("x-rayed", 5)], Strangers(production));
    }

    [Fact]
    public void A_lot_that_nobody_knows_has_no_strangers() => Assert.Empty(Strangers(With([], UnitsOf("NONE", XRay, 9))));

    // R01 is split in two; R03 is one whole short end, so that its second piece never was.
    [Fact]
    public void The_last_piece_of_a_short_end_is_known_and_the_next_number_is_not()
    {
        var split = new StockSplit(Nowhere) { On = When(Friday), Into = [Written(At(10)), Written(At(28))] };
        var stock = With(
            [First, Third],
            End(split),
            End(XRay, piece: 1),
            End(XRay, piece: 2),
            End(XRay, piece: 3),
            End(XRay, "R03", 1),
            End(XRay, "R03", 2)
        )
            .Stock();

        Assert.Equal([("R01", 3), ("R03", 2)], stock.Strangers.Select(s => (s.Parent?.Name.Value, s.Piece ?? 0)));
    }

    [Fact]
    public void A_piece_of_a_roll_that_left_nothing_is_an_impossible_move_and_no_stranger()
    {
        var production = With([ShotOut], End(new StockLost(Nowhere) { On = When(Sunday) }, "R02", 1));

        Assert.Empty(Strangers(production));
        Assert.Equal([StockFault.NeverHere], Faults(production));
    }
}
