using CsCheck;
using Spoolbook.Shoot.Accounts;
using static Spoolbook.Shoot.Tests.Sheets.Sheet;

namespace Spoolbook.Shoot.Tests.Stock;

/// <summary>Laws of stock, on shoots that careless people wrote down.</summary>
public class StockLawTests
{
    [Fact]
    public void Every_unit_is_somewhere_exactly_once() => AnyShoot.Production.Sample(production =>
    {
        foreach (var lot in production.Stock().Lots)
        {
            Assert.True(lot is { UnitsUnopened: >= 0, UnitsLoaded: >= 0, UnitsPractised: >= 0 });
            Assert.Equal(lot.UnitsReceived, lot.UnitsUnopened + lot.UnitsLoaded + lot.UnitsPractised);
        }
    });

    [Fact]
    public void Every_foot_received_is_somewhere_exactly_once() => AnyShoot.Production.Sample(production =>
    {
        foreach (var lot in production.Stock().Lots)
        {
            Assert.Equal(
                lot.Received + lot.Remeasured,
                lot.Unopened + lot.Exposed + lot.ShortEnds + lot.InCamera + lot.Practice + lot.Unread);
        }
    });

    [Fact]
    public void Film_in_no_lot_is_the_film_of_rolls_that_are_placed_nowhere() => AnyShoot.Production.Sample(production =>
    {
        var book = BookKeeper.Keep(production);
        var stock = StockBook.Keep(book);
        var nowhere = book.Rolls.Where(r => stock.Unplaced.Contains(r.Roll)).Sum(r => r.Tally.Exposed);
        Assert.Equal(book.Total.Exposed, stock.Lots.Sum(l => l.Exposed) + nowhere);
    });

    [Fact]
    public void The_days_add_up_to_the_shoot() => AnyShoot.Production.Sample(production =>
    {
        var book = BookKeeper.Keep(production);
        var days = StockBook.Keep(book).Days;
        Assert.Equal(book.Total.Loaded, days.Sum(d => d.Use.Tally.Loaded));
        Assert.Equal(book.Total.Good, days.Sum(d => d.Use.Tally.Good));
        Assert.Equal(book.Counted.Sum(r => r.Layers.Length), days.Sum(d => d.Use.Takes));
        Assert.Equal(book.Total.Loaded, days.Sum(d => d.Loaded));
    });

    [Fact]
    public void The_last_evening_is_what_is_left_of_the_shoot() => AnyShoot.Production.Sample(production =>
    {
        var stock = production.Stock();
        if (stock.Days is [.., var last])
        {
            Assert.Equal((stock.OnHand, stock.Left), (last.OnHand, last.Left));
        }
    });

    [Fact]
    public void The_order_of_the_roll_files_changes_nothing() =>
        Gen.Select(AnyShoot.Production, Gen.Int[0, 99]).Sample((production, turn) =>
        {
            // Loading times tell rolls apart, so that who came first does not hang on the order of the files.
            var told = production.Rolls.Select((r, i) => r with { Load = r.Load with { On = Written(r.Load.On.Value.AddMinutes(i)) } }).ToList();
            var at = told.Count == 0 ? 0 : turn % told.Count;
            var straight = (production with { Rolls = [.. told] }).Stock();
            var turned = (production with { Rolls = [.. told.Skip(at), .. told.Take(at)] }).Stock();
            Assert.Equal(straight.Lots.Select(l => (l.Left, l.Exposed, l.Practice)), turned.Lots.Select(l => (l.Left, l.Exposed, l.Practice)));
            Assert.Equal(straight.Days.Select(d => (d.On, d.Left)), turned.Days.Select(d => (d.On, d.Left)));
        });
}
