using CsCheck;
using Spoolbook.Film;
using Spoolbook.Shoot.Forecasts;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Tests.Stock;
using static Spoolbook.Shoot.Tests.Money.PricedProduction;
using static Spoolbook.Shoot.Tests.Sheets.Sheet;

namespace Spoolbook.Shoot.Tests.Money;

public class CostToEndTests
{
    [Fact]
    public void What_a_foot_cost_so_far_is_what_a_foot_to_come_costs()
    {
        // One shot of 100 ft is got for 59.50 (32.00 + 18 shipping, 19 % tax); three more want 300 ft, and 300 ft are there.
        var end = EndOf(Listed(Of(Shot(100)), 4));
        Assert.Equal((At(300), At(0)), (end.Film, end.Lacking));
        Assert.Equal((178.50m, 0.00m, 154.00m + 59.50m + 178.50m), (end.Lab, end.Stock, end.Total));
    }

    [Fact]
    public void Film_that_the_stock_lacks_is_bought_at_the_price_of_a_foot_of_it()
    {
        // Four more shots want 400 ft; 300 are left, and 400 ft did cost 154.00.
        var end = EndOf(Listed(Of(Shot(100)), 5));
        Assert.Equal((At(100), 38.50m), (end.Lacking, end.Stock));
    }

    [Fact]
    public void A_rate_that_is_missing_leaves_the_end_open()
    {
        var production = Listed(Of(Shot(100)), 4);
        var end = EndOf(production with { Rates = Full with { Shipping = null } });
        Assert.Null(end.Lab);
        Assert.Null(end.Total);
    }

    [Fact]
    public void Without_a_shot_list_nothing_is_made_up()
    {
        var end = EndOf(Of(Shot(100)));
        Assert.Equal(new CostToEnd(null, null, null, null, null), end with { LabSoFar = 0, FilmSoFar = Footage.Zero });
        Assert.Null(end.ToCome);
    }

    [Fact]
    public void When_all_is_got_the_end_is_the_total() =>
        Assert.Equal(Listed(Of(Shot(100)), 1).Cost().Total, EndOf(Listed(Of(Shot(100)), 1)).Total);

    [Fact]
    public void The_end_is_never_less_than_the_total_so_far() =>
        Gen.Select(AnyShoot.Production, Gen.Int[0, 9])
            .Sample(
                (production, more) =>
                {
                    var priced = Listed(Priced(production), more);
                    Assert.True(EndOf(priced).Total is not { } total || total >= priced.Cost().Total);
                }
            );

    static CostToEnd EndOf(Production production)
    {
        var books = Books.Of(production);
        return CostToEnd.Compute(books.Stock, books.Cost, FilmForecast.Compute(books.Forecast.Input, draws: 100));
    }

    // 7B, which is got, and others.
    static Production Listed(Production production, int shots) =>
        production with
        {
            Shots = [.. Enumerable.Range(7, shots).Select(n => new PlannedShot(default, Written($"{n}"), Written("B"), null, null, null))],
        };
}
