using Spoolbook.Film;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Forecasts;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Tests.Sheets;
using Spoolbook.Shoot.Tests.Stock;
using static Spoolbook.Shoot.Tests.Sheets.Sheet;

namespace Spoolbook.Shoot.Tests.Forecasts;

/// <summary>A shot by lamplight is not shot on daylight stock without the filter: which stock is left matters (common practice).</summary>
public class ForecastByStockTests
{
    static readonly Place Nowhere = new("production.yaml", 1, 1, 1);

    static readonly Sheet Day = Of(At(100), "R1")
        .FromUnit(1)
        .Head(At(4))
        .Take("1A/1", At(24))
        .Take("1B/1", At(44))
        .Take("1C/1", At(64))
        .RunOff(At(100))
        .Unload();

    static readonly Sheet Evening = Of(At(100), "R2")
        .FromUnit(2)
        .Head(At(4))
        .Take("1D/1", At(24))
        .Take("1E/1", At(44))
        .RunOff(At(100))
        .Unload();

    [Fact]
    public void Twelve_units_of_daylight_stock_are_no_film_for_three_shots_by_lamplight()
    {
        var forecast = Forecast(days: 12, SubjectLight.Tungsten, SubjectLight.Tungsten, SubjectLight.Tungsten);

        Assert.Equal(Ratio.Zero, forecast.Lasts);
        Assert.Equal((At(1200), At(0)), (forecast.Input.Stock, forecast.StockFor(forecast.Input.Kinds[0])));
        Assert.All(forecast.Figures, f => Assert.Equal((f.Needed, "500 T"), (f.Lacking, Assert.Single(f.Orders).Order.Stock)));

        // Three shots of 20 ft, and as much lost beside them: 120 ft, two units.
        var order = Assert.Single(forecast.PlainOrders!.Value);
        Assert.Equal(("500 T", At(120), 2L), (order.Order.Stock, order.Film, order.Units));
        Assert.Equal((0, SubjectLight.Tungsten), (forecast.PlainReach, forecast.PlainShortKind!.Light));
    }

    [Fact]
    public void A_blue_filter_in_the_kit_lets_daylight_stock_serve_by_lamplight()
    {
        // 80B: -112 mireds (Sekonic C-800 manual, p. 188); from 3200 to 5500 K it is -131.
        var forecast = Forecast(days: 12, ["80B"], SubjectLight.Tungsten, SubjectLight.Tungsten, SubjectLight.Tungsten);

        Assert.Equal(FilmForecast.Surest(5), forecast.Lasts);
        Assert.All(forecast.Figures, f => Assert.Empty(f.Orders));
    }

    [Theory]
    [InlineData("85", true)]
    [InlineData("81EF", false)]
    [InlineData("ND 0.6", false)]
    public void An_85_lets_tungsten_stock_serve_in_daylight_and_a_warming_filter_does_not(string filter, bool serves)
    {
        var production = Production(days: 0, [filter]);

        Assert.Equal(serves, LightMatch.Serves(production, ColourBalance.Tungsten, SubjectLight.Daylight, LightMatch.UsualMireds));
        Assert.False(LightMatch.Serves(production, ColourBalance.Daylight, SubjectLight.Tungsten, LightMatch.UsualMireds));
        Assert.True(LightMatch.Serves(production, ColourBalance.None, SubjectLight.Tungsten, LightMatch.UsualMireds));
    }

    [Fact]
    public void Film_that_serves_two_lights_is_promised_to_one_of_them()
    {
        var ground = Grounds.Of([400, 400, 400, 400, 400], left: 6, stock: 2800) with
        {
            Lost = [],
            Unit = At(10),
            Pools = [new(ColourBalance.Daylight, At(30)), new(ColourBalance.Tungsten, At(40))],
            Kinds =
            [
                new(SubjectLight.Tungsten, [1], new("500 T", ColourBalance.Tungsten, At(10), [])),
                new(SubjectLight.Daylight, [0, 1], new("250 D", ColourBalance.Daylight, At(10), [])),
            ],
            ToCome = [.. Enumerable.Range(0, 6).Select(i => new ShotToCome($"2{i}", i % 2, null))],
        };

        // 30 ft by lamplight leave 10 ft of the tungsten stock to the 30 ft in daylight.
        Assert.All(FilmForecast.Compute(ground).Figures, f => Assert.Empty(f.Orders));
        var short5 = FilmForecast.Compute(
            ground with
            {
                Pools = [new(ColourBalance.Daylight, At(15)), new(ColourBalance.Tungsten, At(40))],
                Stock = At(55),
            }
        );
        Assert.All(short5.Figures, f =>
            Assert.Equal([("250 D", At(5), 1L)], f.Orders.Select(o => (o.Order.Stock!, o.Film, o.Units!.Value)))
        );
    }

    [Fact]
    public void No_less_film_is_promised_than_the_planned_screen_times_at_the_ratio_of_the_shoot()
    {
        // 12 minutes of screen time at 4:1, where five shots so far took 10 ft each.
        var ground = Grounds.Of([380, 390, 400, 410, 420], left: 4, stock: 100_000) with
        {
            OwnRatio = 4,
            ToCome = [.. Enumerable.Range(0, 4).Select(i => new ShotToCome($"2{i}", 0, new Footage(180 * 24)))],
        };
        var forecast = FilmForecast.Compute(ground);

        Assert.Equal(new Footage(4 * 4 * 180 * 24), forecast.Plain);
        Assert.Equal(forecast.Plain, forecast.Figures[0].Needed);
        Assert.All(forecast.Figures, f => Assert.True(f.Needed >= forecast.Plain));
        Assert.True(FilmForecast.Compute(ground with { Stock = forecast.Plain!.Value - new Footage(1) }).Lasts < new Ratio(1, 2));
    }

    [Fact]
    public void A_list_that_plans_less_than_the_shots_so_far_took_changes_nothing()
    {
        var ground = Grounds.Of([380, 390, 400, 410, 420], left: 4, stock: 2000);
        var planned = ground with
        {
            OwnRatio = 2,
            ToCome = [.. Enumerable.Range(0, 4).Select(i => new ShotToCome($"2{i}", 0, new Footage(24)))],
        };
        Assert.Equal(
            FilmForecast.Compute(ground).Figures.Select(f => f.Needed),
            FilmForecast.Compute(planned).Figures.Select(f => f.Needed)
        );
    }

    [Fact]
    public void Stock_to_come_is_priced_as_the_stock_that_lacks()
    {
        // 120 ft of 500 T at 60 for 100 ft, not at the 40 that most of the film did cost.
        var production = Production(days: 12, [], SubjectLight.Tungsten, SubjectLight.Tungsten, SubjectLight.Tungsten);
        Assert.Equal(72.00m, Books.Of(production).ToEnd.Stock);
    }

    static FilmForecast Forecast(int days, params SubjectLight[] left) => Forecast(days, [], left);

    static FilmForecast Forecast(int days, string[] filters, params SubjectLight[] left) =>
        Books.Of(Production(days, filters, left)).Forecast;

    static Production Production(int days, string[] filters, params SubjectLight[] left)
    {
        var production = SmallProduction.Of(Day, Evening);
        var lot = production.Lots[0];
        return production with
        {
            Lots =
            [
                lot with
                {
                    Name = Written("D"),
                    Stock = Written("250 D"),
                    Balance = ColourBalance.Daylight,
                    Units = Written(days + 1),
                    UnitPrice = Written(40m),
                },
                lot with
                {
                    Name = Written("T"),
                    Stock = Written("500 T"),
                    Balance = ColourBalance.Tungsten,
                    Units = Written(1),
                    UnitPrice = Written(60m),
                },
            ],
            Rolls =
            [
                production.Rolls[0] with
                {
                    Lot = Written("D"),
                    Unit = Written(1),
                },
                production.Rolls[1] with
                {
                    Lot = Written("T"),
                    Unit = Written(1),
                },
            ],
            Filters = [.. filters.Select(f => new Filter(Nowhere, Written(f), null, null, null, new Returned(1, null, null)))],
            Shots =
            [
                .. left.Select((l, i) => new PlannedShot(Nowhere, Written("2"), Written($"{(char)('A' + i)}"), null, null, Written(l))),
            ],
        };
    }
}
