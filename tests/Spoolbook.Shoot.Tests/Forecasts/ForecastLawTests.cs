using CsCheck;
using Spoolbook.Film;
using Spoolbook.Shoot.Forecasts;

namespace Spoolbook.Shoot.Tests.Forecasts;

public class ForecastLawTests
{
    const int Draws = 300;

    [Fact]
    public void One_shot_more_never_needs_less_film() =>
        Grounds.Any.Sample(
            ground =>
            {
                var more = FilmForecast.Compute(ground with { ShotsLeft = ground.ShotsLeft + 1 }, Draws);
                var forecast = FilmForecast.Compute(ground, Draws);
                Assert.True(more.Plain >= forecast.Plain);
                Assert.True(more.Lasts <= forecast.Lasts);
                Assert.All(more.Figures.Zip(forecast.Figures), f => Assert.True(f.First.Needed >= f.Second.Needed));
            },
            iter: 100
        );

    [Fact]
    public void More_stock_never_lessens_the_chance() =>
        Gen.Select(Grounds.Any, Gen.Long[1, 50_000])
            .Sample(
                (ground, more) =>
                {
                    var richer = FilmForecast.Compute(ground with { Stock = ground.Stock + new Footage(more) }, Draws);
                    var forecast = FilmForecast.Compute(ground, Draws);
                    Assert.True(richer.Lasts >= forecast.Lasts);
                    Assert.All(richer.Days.Zip(forecast.Days), d => Assert.True(d.First.Lasts >= d.Second.Lasts));
                    Assert.All(richer.Figures.Zip(forecast.Figures), f =>
                        Assert.True(f.First.Lacking <= f.Second.Lacking && f.First.Needed == f.Second.Needed)
                    );
                },
                iter: 100
            );

    [Fact]
    public void The_same_shoot_gives_the_same_figures() =>
        Grounds.Any.Sample(
            ground =>
                Assert.Equal(
                    Said(FilmForecast.Compute(ground, Draws)),
                    Said(FilmForecast.Compute(ground with { Unit = ground.Unit }, Draws))
                ),
            iter: 50
        );

    [Fact]
    public void The_surer_the_figure_the_more_film_and_each_day_needs_more_than_the_one_before() =>
        Grounds.Any.Sample(
            ground =>
            {
                var forecast = FilmForecast.Compute(ground, Draws);
                Assert.Equal(FilmForecast.Percents, forecast.Figures.Select(f => f.Percent));
                Assert.Equal(forecast.Figures, forecast.Figures.OrderBy(f => f.Needed));
                Assert.Equal(forecast.Days, forecast.Days.OrderBy(d => d.Shots));
                Assert.Equal(ground.ShotsLeft, forecast.Days[^1].Shots);
                Assert.Equal(forecast.Lasts, forecast.Days[^1].Lasts);
                Assert.Equal(forecast.Figures.Select(f => f.Needed), forecast.Days[^1].Needed);
                for (var i = 0; i < FilmForecast.Percents.Length; i++)
                {
                    Assert.Equal(forecast.Days, forecast.Days.OrderBy(d => d.Needed[i]));
                }
            },
            iter: 100
        );

    [Fact]
    public void A_figure_is_enough_for_exactly_as_many_as_it_says() =>
        Grounds.Any.Sample(
            ground =>
            {
                foreach (var figure in FilmForecast.Compute(ground, Draws).Figures)
                {
                    var withIt = FilmForecast.Compute(ground with { Stock = figure.Needed }, Draws);
                    Assert.True(withIt.Lasts >= new Ratio(figure.Percent, 100));
                }
            },
            iter: 50
        );

    [Fact]
    public void Units_hold_what_they_are_ordered_for_and_one_less_does_not() =>
        Grounds.Any.Sample(
            ground =>
            {
                foreach (var figure in FilmForecast.Compute(ground, Draws).Figures)
                {
                    var unit = ground.Unit!.Value.Frames;
                    Assert.InRange(
                        figure.Lacking.Frames,
                        ((figure.UnitsToOrder!.Value - 1) * unit) + 1 - (figure.Lacking.Frames == 0 ? 1 : 0),
                        figure.UnitsToOrder.Value * unit
                    );
                    Assert.InRange(figure.Needed.Frames, 0, figure.Units!.Value * unit);
                }
            },
            iter: 50
        );

    static string Said(FilmForecast forecast) =>
        string.Join(";", forecast.Figures)
        + forecast.Lasts
        + string.Join(";", forecast.Days.Select(d => $"{d.Ahead} {d.Shots} {string.Join(",", d.Needed)} {d.Lasts}"));
}
