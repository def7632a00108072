using Spoolbook.Film;
using Spoolbook.Shoot;
using Spoolbook.Shoot.Accounts;

namespace Spoolbook.Papers.Tests.Ledger;

/// <summary>Accounts in metres, as they are printed: a foot is 0.3048 m.</summary>
public class MetricBookTests
{
    public static TheoryData<string> Shoots => ["metric-35mm-25", "animation", "forty-rolls", "half-way", "sync-documentary", "passes"];

    [Theory]
    [MemberData(nameof(Shoots))]
    public void A_roll_adds_up_to_what_was_loaded_to_the_nearest_centimetre(string shoot)
    {
        var books = BooksOf(shoot);
        foreach (var roll in books.Shoot.Rolls)
        {
            var printed = books.Metric.Of(roll);
            Assert.Equal(
                Centimetres(roll.Tally.Loaded, books).Round(),
                printed.Good + printed.Hold + printed.NoGood + printed.Waste + printed.ShortEnd
            );
            Assert.Equal(roll.Tally.Wasted.Where(w => w.Value > Footage.Zero).Select(w => w.Key), printed.Wasted.Keys);
            Near(roll.Tally, printed, books, within: 1);
        }
    }

    [Theory]
    [MemberData(nameof(Shoots))]
    public void The_rolls_and_the_days_and_the_scenes_add_up_to_the_shoot(string shoot)
    {
        var books = BooksOf(shoot);
        var (stock, total) = (books.Stock, books.Metric.Total);
        AddsUp(total, books.Shoot.Counted.Select(r => books.Metric.Of(r)));
        AddsUp(total, stock.Days.Select(d => books.Metric.Of(d.Use)));
        AddsUp(total, stock.Scenes.Select(p => books.Metric.Of(p.Use)));
        AddsUp(total, stock.ByLot.Select(p => books.Metric.Of(p.Use)));
        Assert.Equal(total.Loaded, stock.Days.Sum(d => books.Metric.Of(d).Loaded));
        Assert.Equal(books.Metric.ShortEndsMade, stock.Days.Sum(d => books.Metric.Of(d).ShortEnds));
        Assert.Same(total, books.Metric.Of(stock.Use));
    }

    static void AddsUp(MetricTally total, IEnumerable<MetricTally> parts)
    {
        var all = parts.ToList();
        Assert.Equal(
            (total.Good, total.Hold, total.NoGood, total.Waste, total.Exposed),
            (all.Sum(p => p.Good), all.Sum(p => p.Hold), all.Sum(p => p.NoGood), all.Sum(p => p.Waste), all.Sum(p => p.Exposed))
        );
    }

    static void Near(Tally tally, MetricTally printed, Books books, double within)
    {
        (Footage Exact, long Printed)[] accounts =
        [
            (tally.Good, printed.Good),
            (tally.Hold, printed.Hold),
            (tally.NoGood, printed.NoGood),
            (tally.Waste, printed.Waste),
            (tally.ShortEnd, printed.ShortEnd),
        ];
        Assert.All(accounts, a => Assert.InRange((Centimetres(a.Exact, books) - a.Printed).ToDouble(), -within, within));
    }

    static Ratio Centimetres(Footage film, Books books) => film.Metres(books.Production.Gauge) * 100;

    static Books BooksOf(string shoot) => Ledger.Shoots.Production(shoot).Books;
}
