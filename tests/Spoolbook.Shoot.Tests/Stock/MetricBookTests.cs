using CsCheck;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Strips;
using Spoolbook.Shoot.Tests.Sheets;
using static Spoolbook.Shoot.Tests.Sheets.Sheet;
using static Spoolbook.Shoot.Tests.Stock.StockSheets;

namespace Spoolbook.Shoot.Tests.Stock;

// A foot is 30.48 cm, exact (international foot of 0.3048 m, NIST SP 811): 33 ft are 1005.84 cm, on the can 10.06 m.
public class MetricBookTests
{
    [Fact]
    public void Sealed_cans_count_with_their_printed_length()
    {
        // 4 × 10.06 m; 132 ft in one piece would be 40.23.
        var stock = MetricOf(Short(4)).Stock;

        Assert.Equal((4024, 4024, 4024, 4024), (stock.Received, stock.Unopened, stock.OnHand, stock.Left));
    }

    [Fact]
    public void A_can_that_was_opened_and_canned_again_is_measured()
    {
        // 131 ft are 3992.88 cm.
        var recanned = new StockRecanned(Nowhere)
        {
            On = Written(new StockTime(Friday, null)),
            Lot = Written("N250-A"),
            Units = [Written(2)],
            Off = Written(At(1)),
        };

        var stock = MetricOf(Short(4) with { StockLog = [recanned] }).Stock;
        Assert.Equal((4024, 3993), (stock.Received, stock.Unopened));
    }

    [Fact]
    public void What_can_be_shot_is_in_cans_in_short_ends_and_in_cameras()
    {
        // Three cans of 3048; a short end of 40 ft, 1219.2; 90 ft still in the camera, 2743.2. A second lot has one can.
        var lots = SmallProduction.Of(
            Of(At(100)).FromUnit(1).Take("1A/1", At(60)).Unload(),
            Of(At(100), "R02").FromUnit(2).Take("1A/2", At(10))
        );
        var second = SmallProduction.Lot with { Name = Written("BW-1"), Units = Written(1) };

        var stock = MetricOf(lots with { Lots = [.. lots.Lots.Select(l => l with { Units = Written(5) }), second] }).Stock;
        Assert.Equal((6 * 3048, 4 * 3048, 1219, 2743), (stock.Received, stock.Unopened, stock.ShortEnds, stock.InCamera));
        Assert.Equal(((4 * 3048) + 1219, (4 * 3048) + 1219 + 2743), (stock.OnHand, stock.Left));
    }

    [Fact]
    public void Two_lots_have_the_stock_of_both()
    {
        var both = new MetricStock(6096, 3048, 1219, 762) + new MetricStock(1006, 503, 252, 101);

        Assert.Equal(new MetricStock(7102, 3551, 1471, 863), both);
    }

    [Fact]
    public void A_roll_adds_up_to_what_was_loaded_and_its_waste_to_its_causes()
    {
        // 4 ft of head 121.92, 54 ft good 1645.92, 2 ft of tail 60.96, 40 ft left over 1219.2: 3048 in all.
        var production = SmallProduction.Of(Of(At(100)).FromUnit(1).Head(At(4)).Take("1A/1", At(58)).Unload(At(2)));
        var books = Books.Of(production);

        var tally = books.Metric.Of(books.Shoot.Rolls.Single());
        Assert.Equal((1646, 183, 1219), (tally.Good, tally.Waste, tally.ShortEnd));
        Assert.Equal([(WasteCause.Head, 122), (WasteCause.Tail, 61)], tally.Wasted.Select(w => (w.Key, w.Value)));
        Assert.Equal((1829, 3048), (tally.Exposed, tally.Loaded));
    }

    [Fact]
    public void An_end_that_was_thrown_away_is_exposed_in_no_can()
    {
        // 50 ft good 1524, 10 on hold 304.8, 40 thrown away 1219.2.
        var roll = Of(At(100)).FromUnit(1).Take("1A/1", At(50)).Take("1A/2", At(60), mark: Mark.Hold).Unload(left: Remainder.Thrown);

        var total = MetricOf(SmallProduction.Of(roll)).Total;
        Assert.Equal((1524, 305, 1829, 3048), (total.Good, total.Hold, total.InCan, total.Exposed));
    }

    [Fact]
    public void The_shoot_has_every_cause_of_waste_of_its_rolls()
    {
        // Heads of 4 and of 2 ft: 121.92 and 60.96; an end of 40 ft: 1219.2, and 58 good ones 1767.84.
        var total = MetricOf(
            SmallProduction.Of(
                Of(At(100)).FromUnit(1).Head(At(4)).Take("1A/1", At(100)).Unload(),
                Of(At(100), "R02").FromUnit(2).Head(At(2)).Take("1A/2", At(60)).Unload(left: Remainder.Thrown)
            )
        ).Total;

        Assert.Equal([(WasteCause.Head, 122 + 61), (WasteCause.End, 1219)], total.Wasted.Select(w => (w.Key, w.Value)));
        Assert.Equal(6096, total.Loaded);
    }

    [Fact]
    public void Scenes_days_lots_and_bodies_add_up_to_the_shoot_as_printed()
    {
        // Each roll prints 10.06 m, so the shoot has 40.24; 132 ft in one piece would be 40.23.
        var production = Short(4, [.. Enumerable.Range(1, 4).Select(i => Whole(i, Sunday))]);
        var books = Books.Of(production);
        var (metric, stock) = (books.Metric, books.Stock);

        Assert.Equal(4024, metric.Total.Good);
        Assert.Equal([1006, 1006, 1006, 1006], stock.Scenes.Select(s => metric.Of(s.Use).Good));
        Assert.Equal(4024, metric.Of(stock.Days.Single().Use).Good);
        Assert.Equal(4024, metric.Of(stock.ByLot.Single().Use).Good);
        Assert.Equal(4024, metric.Of(stock.Bodies.Single().Use).Good);
        Assert.Equal(4024, metric.Of(stock.Days.Single()).Loaded);
        Assert.Same(metric.Total, metric.Of(stock.Use));
    }

    [Fact]
    public void Every_split_of_any_shoot_adds_up_account_by_account() =>
        AnyShoot.Production.Sample(production =>
        {
            var books = Books.Of(production);
            var (metric, stock) = (books.Metric, books.Stock);
            Assert.All(
                [
                    stock.Days.Select(d => d.Use),
                    stock.Scenes.Select(s => s.Use),
                    stock.ByLot.Select(l => l.Use),
                    stock.Bodies.Select(b => b.Use),
                ],
                (IEnumerable<UseOfFilm> split) =>
                {
                    var sum = split.Aggregate(MetricTally.None, (all, use) => all + metric.Of(use));
                    Assert.Equal(Accounts(metric.Total), Accounts(sum));
                }
            );

            static (long, long, long, long, long) Accounts(MetricTally t) => (t.Good, t.Hold, t.NoGood, t.Waste, t.ShortEnd);
        });

    [Fact]
    public void Short_ends_of_two_days_add_up_to_those_of_the_shoot()
    {
        // 40 ft are 1219.2 cm and 30 ft 914.4; 70 ft are 2133.6.
        var production = SmallProduction.Of(
            Of(At(100)).FromUnit(1).LoadedOn(Friday).Take("1A/1", At(60)).Unload().OutOn(Friday),
            Of(At(100), "R02").FromUnit(2).LoadedOn(Saturday).Take("1A/2", At(70)).Unload().OutOn(Saturday)
        );
        var books = Books.Of(production);

        Assert.Equal(2134, books.Metric.ShortEndsMade);
        Assert.Equal(
            [(3048, 1219), (3048, 915)],
            books.Stock.Days.Select(books.Metric.Of).Select(day => (day.Loaded, day.ShortEnds))
        );
    }

    [Fact]
    public void The_last_evening_has_what_the_stock_has_and_another_is_measured()
    {
        // Four sealed cans on Friday, 132 ft or 4023.36 cm; three on Saturday, 3 × 10.06 m.
        var friday = Short(5, Whole(1, Friday));
        Assert.Equal(4024, OnHand(friday).Single());

        var lost = new StockLost(Nowhere)
        {
            On = Written(new StockTime(Saturday, null)),
            Lot = Written("N250-A"),
            Units = [Written(5)],
        };
        Assert.Equal([4023, 3018], OnHand(friday with { StockLog = [lost] }));

        static IEnumerable<long> OnHand(Production production)
        {
            var books = Books.Of(production);
            return books.Stock.Days.Select(d => books.Metric.Of(d).OnHand);
        }
    }

    [Fact]
    public void Two_units_of_a_day_add_up_to_it()
    {
        // B1: two cans of 33 ft, of which 13 ft are left, 396.24 cm; B2: two cans. In one piece 66 ft would be 20.12 m, and 132
        // ft 40.23: the day prints 40.24. Good: 53 ft are 1615.44 cm and 66 ft 2011.68, of 610 + 3 × 1006 printed.
        Sheet[] sheets =
        [
            Of(At(33)).FromUnit(1).LoadedOn(Sunday, 8).Take("1A/1", At(20)).Unload(),
            Whole(2, Sunday),
            InSecond(Whole(3, Sunday)),
            InSecond(Whole(4, Sunday)),
        ];
        var books = Books.Of(Short(4, sheets) with { Days = [Day(1), Day(2)] });
        var (metric, units) = (books.Metric, books.Stock.Days.Single().Units);

        Assert.Equal(["B1", "B2"], units.Select(u => u.Body));
        Assert.Equal([(2012, 396), (2012, 0)], units.Select(u => metric.Of(u)));
        Assert.Equal([1616, 2012], units.Select(u => metric.Of(u.Use).Good));
        Assert.Equal((4024, 396, 3628), (metric.Total.Loaded, metric.ShortEndsMade, metric.Total.Good));
    }

    static ShootingDay Day(int number) => new(Nowhere, Written(number), Written(Sunday), null, null);

    static Sheet InSecond(Sheet sheet) => new(sheet.Roll with { Body = Written("B2") });

    // A can of 33 ft, shot from end to end in a scene of its own.
    static Sheet Whole(int unit, DateOnly day) =>
        Of(At(33), $"R0{unit}").FromUnit(unit).LoadedOn(day).Take($"{unit}A/1", At(33)).Unload().OutOn(day);

    static Production Short(int units, params Sheet[] sheets) =>
        SmallProduction.Of(sheets) with
        {
            Lots = [SmallProduction.Lot with { Length = Written(At(33)), Units = Written(units) }],
        };

    static MetricBook MetricOf(Production production) => Books.Of(production).Metric;
}
