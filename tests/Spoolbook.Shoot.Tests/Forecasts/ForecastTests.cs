using Spoolbook.Film;
using Spoolbook.Shoot.Forecasts;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Tests.Sheets;
using Spoolbook.Shoot.Tests.Stock;
using static Spoolbook.Shoot.Tests.Sheets.Sheet;

namespace Spoolbook.Shoot.Tests.Forecasts;

public class ForecastTests
{
    static readonly Place Nowhere = new("production.yaml", 1, 1, 1);

    // Two rolls of four. On the first 4 ft of head, 1A with 10 + 12 ft, 1B with 18 ft, 16 ft run off capped, 2 ft of it tail;
    // on the second 4 ft of head, 1C with 20 ft, a test of 6 ft, and 70 ft left over and kept.
    static readonly Sheet First = Of(At(60), "R1")
        .FromUnit(1)
        .Head(At(4))
        .Take("1A/1", At(14), mark: Mark.NoGood)
        .Take("1A/2", At(26))
        .Take("1B/1", At(44))
        .RunOff(At(60))
        .Unload(At(2));

    static readonly Sheet Second = Of(At(100), "R2")
        .FromUnit(2)
        .Head(At(4))
        .Take("1C/1", At(24))
        .Take("T/1", At(30), mark: Mark.Test)
        .Unload();

    static FilmForecast Forecast(Production production) => Books.Of(production).Forecast;

    static Production Listing(Production production, params string[] shots) =>
        production with
        {
            Shots = [.. shots.Select(s => new PlannedShot(Nowhere, Written(s[..1]), Written(s[1..]), null, null, null))],
        };

    [Fact]
    public void A_shot_costs_all_its_takes_and_what_is_lost_beside_them()
    {
        var forecast = Forecast(Listing(SmallProduction.Of(First, Second), "1A", "1B", "1C", "1D", "1E"));

        Assert.Equal([("1A", At(22)), ("1B", At(18)), ("1C", At(20))], forecast.Input.Finished.Select(s => (s.Name, s.Film)));

        // Head 4 and run-off 16; head 4 and the test's 6.
        Assert.Equal([At(20), At(10)], forecast.Input.Lost.ToArray());
        Assert.Equal(new Ratio(30, 60), forecast.Input.LossRate);

        // Three shots are too few to draw from: two more at 20 ft, and half as much again beside them.
        Assert.Equal(ForecastBasis.TooFew, forecast.Basis);
        Assert.Equal((2, At(60)), (forecast.Input.ShotsLeft, forecast.Plain));
        Assert.Empty(forecast.Figures);

        // Two sealed units and 70 ft kept.
        Assert.Equal((At(270), At(0)), (forecast.Input.Stock, forecast.PlainLacking));
    }

    [Fact]
    public void A_short_end_that_holds_no_usual_take_is_lost_and_no_stock()
    {
        // Head 4, 1A 80 ft; 16 ft left. A usual take is 80 ft.
        var forecast = Forecast(Listing(SmallProduction.Of(Of(At(100)).FromUnit(1).Head(At(4)).Take("1A/1", At(84)).Unload()), "1A", "1B"));
        Assert.Equal((At(300), At(16)), (forecast.Input.Stock, forecast.Input.TooShort));
        Assert.Equal(At(20), Assert.Single(forecast.Input.Lost));
    }

    [Fact]
    public void A_shot_begun_and_not_got_is_still_to_be_shot_whole()
    {
        var begun = Of(At(100))
            .FromUnit(1)
            .Take("1A/1", At(10))
            .Take("1B/1", At(30), mark: Mark.NoGood)
            .Take("1C/1", At(40), mark: Mark.Hold)
            .Unload();
        var forecast = Forecast(Listing(SmallProduction.Of(begun), "1A", "1B", "1C", "1D"));
        Assert.Equal(3, forecast.Input.ShotsLeft);
        Assert.Equal(At(10), forecast.Input.Average);
        Assert.Equal(At(0), Assert.Single(forecast.Input.Lost));
    }

    [Fact]
    public void Film_that_two_shots_share_is_counted_for_one_of_them()
    {
        var twice = Of(At(100)).FromUnit(1).Take("5A/1", At(20)).Rewind(At(0)).Take("5B/1", At(20)).Unload();
        var forecast = Forecast(Listing(SmallProduction.Of(twice), "5A", "5B", "5C"));
        Assert.Equal([At(20), At(0)], forecast.Input.Finished.Select(s => s.Film));
    }

    [Fact]
    public void What_nobody_can_know_is_not_made_up()
    {
        Assert.Equal(ForecastBasis.NoList, Forecast(SmallProduction.Of(First)).Basis);
        Assert.Equal(ForecastBasis.NothingLeft, Forecast(Listing(SmallProduction.Of(First), "1A", "1B")).Basis);
        var none = Forecast(Listing(SmallProduction.Of(), "1A", "1B"));
        Assert.Equal(ForecastBasis.NothingFinished, none.Basis);
        Assert.Null(none.Plain);
        Assert.Equal(ForecastBasis.NoList, Forecast(Listing(SmallProduction.Of(First), "1A", "1D") with { Unread = [Part.Shots] }).Basis);
    }

    [Fact]
    public void Shots_that_are_all_alike_and_lose_nothing_need_exactly_as_much_again()
    {
        var forecast = FilmForecast.Compute(
            Grounds.Of(finished: [400, 400, 400, 400, 400], left: 7, stock: 2800) with
            {
                Unit = At(100),
                Lost = [],
            }
        );
        Assert.All(forecast.Figures, f => Assert.Equal((new Footage(2800), At(0), 1, 0), (f.Needed, f.Lacking, f.Units, f.UnitsToOrder)));
        Assert.Equal(FilmForecast.Surest(5), forecast.Lasts);
        Assert.Null(forecast.RunsOut);
    }

    [Fact]
    public void A_foot_less_than_that_and_the_stock_lacks_a_unit_on_the_last_day()
    {
        var days = new[] { StockSheets.Friday, StockSheets.Saturday, StockSheets.Sunday };
        var forecast = FilmForecast.Compute(
            Grounds.Of([400, 400, 400, 400, 400], left: 7, stock: 2799) with
            {
                Unit = At(100),
                Lost = [],
                DaysToCome = [.. days],
            }
        );
        Assert.All(forecast.Figures, f => Assert.Equal((new Footage(1), 1), (f.Lacking, f.UnitsToOrder)));
        Assert.Equal(Ratio.Zero, forecast.Lasts);
        Assert.Equal(
            [(StockSheets.Friday, 2), (StockSheets.Saturday, 5), (StockSheets.Sunday, 7)],
            forecast.Days.Select(d => (d.On!.Value, d.Shots))
        );
        Assert.Equal(StockSheets.Sunday, forecast.RunsOut?.On);
    }

    [Fact]
    public void Where_no_days_are_listed_shots_go_on_at_the_pace_so_far()
    {
        // Five shots in two days: three a day.
        var forecast = FilmForecast.Compute(Grounds.Of([400, 410, 420, 430, 440], left: 7, stock: 1000) with { DaysShot = 2 });
        Assert.Equal([(1, 3), (2, 6), (3, 7)], forecast.Days.Select(d => (d.Ahead, d.Shots)));
        Assert.All(forecast.Days, d => Assert.Null(d.On));
        Assert.Equal(1, forecast.RunsOut?.Ahead);
    }

    [Theory]
    [InlineData(2800, 7)]
    [InlineData(2799, 6)]
    [InlineData(400, 1)]
    [InlineData(399, 0)]
    [InlineData(9999, 7)]
    public void The_stock_holds_so_many_shots_whole_at_the_plain_average(long stock, int shots) =>
        Assert.Equal(shots, FilmForecast.Compute(Grounds.Of([400, 400, 400, 400, 400], left: 7, stock) with { Lost = [] }).PlainReach);

    [Theory]
    [InlineData(4, false, ForecastBasis.TooFew)]
    [InlineData(3, true, ForecastBasis.Drawn)]
    [InlineData(0, true, ForecastBasis.Drawn)]
    public void A_production_sets_how_many_finished_shots_are_enough(long toGoOn, bool isEnough, ForecastBasis basis)
    {
        var forecast = FilmForecast.Compute(Grounds.Of([400, 410, 420], left: 7, stock: 1000) with { ShotsToGoOn = toGoOn });

        Assert.Equal((isEnough, basis), (forecast.HasEnoughToGoOn, forecast.Basis));
        Assert.Equal(basis == ForecastBasis.Drawn, forecast.Figures.Length > 0);
    }

    [Fact]
    public void One_shot_may_be_enough_for_an_average_and_has_no_spread_to_draw_from()
    {
        var forecast = FilmForecast.Compute(Grounds.Of([400], left: 7, stock: 1000) with { ShotsToGoOn = 1 });

        Assert.True(forecast.HasEnoughToGoOn);
        Assert.Equal((ForecastBasis.TooFew, 2L), (forecast.Basis, forecast.FewestToDraw));
    }

    [Fact]
    public void A_shot_that_has_only_a_take_on_hold_is_still_to_be_got()
    {
        var held = Of(At(60), "R1").FromUnit(1).Head(At(4)).Take("1A/1", At(14)).Take("1B/1", At(24), mark: Mark.Hold);
        var coverage = Books.Of(Listing(SmallProduction.Of(held), "1A", "1B", "1C")).Coverage;

        Assert.Equal(["1A"], coverage.Got.Select(s => s.Name));
        Assert.Equal(["1B", "1C"], coverage.Left!.Value.Select(s => s.Name));
        Assert.Equal((true, At(10)), (coverage.Left!.Value[0].HasHeld, coverage.Left!.Value[0].Film));
    }
}
