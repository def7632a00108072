using System.Globalization;
using System.Text;
using Spoolbook.Film;
using Spoolbook.Shoot.Forecasts;

namespace Spoolbook.Shoot.Tests.Forecasts;

/// <summary>
/// Does the forecast hold as often as it says? scripts/calibrate-forecast runs this with two thousand shoots a row, and
/// writes the table of the reference page; the suite runs it with fewer, and so with wider bounds for each row, and those of
/// the long run for all rows together.
/// </summary>
public class CalibrationTests
{
    const int FewShoots = 120;

    static readonly (int Finished, int Left)[] Sizes = [(5, 10), (12, 24), (25, 25), (8, 12), (40, 20)];

    [Fact]
    public void The_80_percent_figure_holds_about_eighty_times_in_a_hundred()
    {
        var asked = Environment.GetEnvironmentVariable("SPOOLBOOK_SHOOTS");
        var shoots = asked is null ? FewShoots : int.Parse(asked, CultureInfo.InvariantCulture);
        var draws = asked is null ? 300 : 1000;

        // Three standard errors of so many shoots beyond what the long run must keep to.
        var slack = asked is null ? 3 * Math.Sqrt(0.16 / shoots) : 0;
        var table = new StringBuilder("| behaviour | finished | left | 50 % | 80 % | 95 % | plain 80 % |\n|---|---|---|---|---|---|---|\n");
        var outside = new List<string>();
        var foreseen = new List<double>();
        foreach (var behaviour in Behaviour.All.Where(b => b.Foreseen || asked is not null))
        {
            foreach (var (finished, left) in asked is null ? Sizes[..3] : Sizes)
            {
                var held = Held(behaviour, finished, left, shoots, draws);
                var line = string.Create(CultureInfo.InvariantCulture, $"| {behaviour.Name} | {finished} | {left} | {held[0]:0.0} | {held[1]:0.0} | {held[2]:0.0} | {held[3]:0.0} |");
                table.Append(line).Append('\n');
                if (behaviour.Foreseen)
                {
                    foreseen.Add(held[1]);
                }

                if (behaviour.Foreseen && (held[1] < 75 - (100 * slack) || held[1] > 85 + (100 * slack)))
                {
                    outside.Add(line);
                }
            }
        }

        Directory.CreateDirectory(Path.Combine(AppContext.BaseDirectory, "received"));
        File.WriteAllText(Path.Combine(AppContext.BaseDirectory, "received", "calibration.md"), table.ToString());
        Assert.True(outside.Count == 0, string.Join("\n", outside));
        Assert.InRange(foreseen.Average(), 75, 85);
    }

    // How often, in a hundred, each figure was enough; and, last, the 80 % figure of the sample plainly drawn again.
    static double[] Held(Behaviour behaviour, int finished, int left, int shoots, int draws)
    {
        var held = new int[FilmForecast.Percents.Length + 1];
        Parallel.For(0, shoots, shoot =>
        {
            var (ground, used) = SimulatedShoot.Play(behaviour, finished, left, (ulong)shoot);
            Footage[] enough = [.. FilmForecast.Of(ground, draws).Figures.Select(f => f.Needed), Plain(ground, draws)];
            for (var i = 0; i < enough.Length; i++)
            {
                if (used <= enough[i])
                {
                    Interlocked.Increment(ref held[i]);
                }
            }
        });
        return [.. held.Select(h => 100.0 * h / shoots)];
    }

    static Footage Plain(ForecastGround ground, int draws)
    {
        var by = new DrawnNumbers(FilmForecast.Seed, 0);
        var sums = Enumerable.Range(0, draws).Select(_ => Enumerable.Range(0, ground.ShotsLeft!.Value).Sum(_ => ground.Finished[by.Below(ground.Finished.Length)].Film.Frames));
        var eighty = sums.Order().ElementAt((draws * 80 / 100) - 1);
        return new Footage((long)(eighty * (1 + ground.LossRate.ToDouble())));
    }
}
