using Spoolbook.Film;
using Spoolbook.Shoot.Forecasts;

namespace Spoolbook.Shoot.Tests.Forecasts;

/// <summary>
/// The random draws agree with exact convolution, as closely as so many draws can: a part p of n draws has the standard
/// error √(p(1 − p) ∕ n), at 4,000 draws and 80 % that is 0.63 in a hundred, and four of them are allowed.
/// </summary>
public class ExactForecastTests
{
    const int Few = FilmForecast.Draws;
    const int Many = 40_000;

    public static TheoryData<long[], long[], int, int> Small =>
        new()
        {
            { [400, 500, 600, 700, 800], [], 1, Few },
            { [400, 500, 600, 700, 800], [200, 320], 3, Few },
            { [90, 400, 420, 1300, 5000], [200, 320], 2, Many },
            { [0, 300, 350, 900, 1000], [100, 600, 1500], 2, Many },
            { [1000, 1000, 1000, 1000, 1001], [40], 3, Many },
        };

    [Theory]
    [MemberData(nameof(Small))]
    public void Figures_and_chance_are_those_of_exact_convolution(long[] shots, long[] lost, int left, int draws)
    {
        var ground = Grounds.Of(shots, left, stock: 0) with { Lost = [.. lost.Select(l => new Footage(l))] };
        var exact = new ExactForecast(ground);
        foreach (var figure in FilmForecast.Compute(ground, draws).Figures)
        {
            var part = figure.Percent / 100.0;
            Assert.True(
                exact.ChanceOf(figure.Needed) >= part - Allowed(part, draws),
                $"{figure.Percent} %: {figure.Needed.Frames} frames hold {exact.ChanceOf(figure.Needed):0.0000}"
            );
            Assert.True(
                exact.ChanceOf(figure.Needed - new Footage(1)) <= part + Allowed(part, draws),
                $"{figure.Percent} %: {figure.Needed.Frames} frames hold {exact.ChanceOf(figure.Needed):0.0000}"
            );
        }

        foreach (var stock in new[] { 1, 2, 3 }.Select(times => new Footage(times * shots.Sum() * left / 10)))
        {
            var chance = Math.Min(exact.ChanceOf(stock), FilmForecast.Surest(shots.Length).ToDouble());
            var lasts = FilmForecast.Compute(ground with { Stock = stock }, draws).Lasts!.Value.ToDouble();
            Assert.InRange(lasts, chance - Allowed(chance, draws), chance + Allowed(chance, draws));
        }
    }

    static double Allowed(double part, int draws) => (4 * Math.Sqrt(part * (1 - part) / draws)) + 1e-6;
}
