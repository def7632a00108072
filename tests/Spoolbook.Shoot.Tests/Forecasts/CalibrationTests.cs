using System.Globalization;
using System.Text;
using Spoolbook.Film;
using Spoolbook.Shoot.Forecasts;

namespace Spoolbook.Shoot.Tests.Forecasts;

/// <summary>
/// Whether the forecast holds as often as it says. scripts/calibrate-forecast plays two thousand shoots of each
/// behaviour and size, and writes the table of the reference page; the suite plays two thousand in all. The seeds are
/// fixed.
/// </summary>
public class CalibrationTests
{
    const int Shoots = 2000;

    static readonly (int Finished, int Left)[] _sizes = [(5, 10), (12, 24), (25, 25), (8, 12), (40, 20)];

    static readonly (Behaviour Behaviour, int Finished, int Left)[] _foreseen =
    [
        .. from behaviour in Behaviour.All where behaviour.Foreseen from size in _sizes select (behaviour, size.Finished, size.Left),
    ];

    // The exact count, so that a change of the method shows here first.
    [Fact]
    public void Of_two_thousand_shoots_the_80_percent_figure_was_enough_for_about_sixteen_hundred()
    {
        var held = 0;
        Parallel.For(0, Shoots, shoot =>
        {
            var (behaviour, finished, left) = _foreseen[shoot % _foreseen.Length];
            var (ground, used) = SimulatedShoot.Play(behaviour, finished, left, (ulong)shoot);
            if (used <= FilmForecast.Compute(ground, draws: 300).Figures.Single(f => f.Percent == 80).Needed)
            {
                Interlocked.Increment(ref held);
            }
        });

        Assert.InRange(held, Shoots * 75 / 100, Shoots * 85 / 100);
        Assert.Equal(1585, held);
    }

    [Fact]
    public void The_table_of_the_reference_page_has_every_behaviour_and_size_and_those_foreseen_hold()
    {
        var rows = File.ReadLines("FORECAST.md")
            .SkipWhile(l => l != "<!-- table -->")
            .Where(l => l.StartsWith("| ", StringComparison.Ordinal))
            .Skip(1)
            .Select(l => l.Split('|', StringSplitOptions.TrimEntries))
            .ToList();
        Assert.Equal(
            from behaviour in Behaviour.All
            from size in _sizes
            select (behaviour.Name, size.Finished, size.Left),
            rows.Select(r => (r[1], int.Parse(r[2], CultureInfo.InvariantCulture), int.Parse(r[3], CultureInfo.InvariantCulture)))
        );
        Assert.All(rows.Where(r => Behaviour.All.Single(b => b.Name == r[1]).Foreseen), r =>
            Assert.InRange(double.Parse(r[5], CultureInfo.InvariantCulture), 75, 85)
        );
    }

    [CalibrationFact]
    public void Of_each_behaviour_and_size_it_holds_75_to_85_times_in_a_hundred()
    {
        var table = new StringBuilder("| behaviour | finished | left | 50 % | 80 % | 95 % | plain 80 % |\n|---|---|---|---|---|---|---|\n");
        var outside = new List<string>();
        foreach (var behaviour in Behaviour.All)
        {
            foreach (var (finished, left) in _sizes)
            {
                var held = Held(behaviour, finished, left, Shoots, draws: 1000);
                var line = string.Create(
                    CultureInfo.InvariantCulture,
                    $"| {behaviour.Name} | {finished} | {left} | {held[0]:0.0} | {held[1]:0.0} | {held[2]:0.0} | {held[3]:0.0} |"
                );
                table.Append(line).Append('\n');
                if (behaviour.Foreseen && held[1] is (< 75 or > 85))
                {
                    outside.Add(line);
                }
            }
        }

        Directory.CreateDirectory(Path.Combine(AppContext.BaseDirectory, "received"));
        File.WriteAllText(Path.Combine(AppContext.BaseDirectory, "received", "calibration.md"), table.ToString());
        Assert.True(outside.Count == 0, string.Join("\n", outside));
    }

    [CalibrationFact]
    public void Stock_that_was_enough_in_99_of_100_draws_is_enough_as_often_as_is_said_at_most()
    {
        var table = new StringBuilder("| finished | at most said | enough, in a hundred | in the worst behaviour |\n|---|---|---|---|\n");
        var outside = new List<string>();
        foreach (var (finished, left) in _sizes.OrderBy(s => s.Finished))
        {
            var held = Behaviour.All.Where(b => b.Foreseen).Select(b => HeldAtTheTop(b, finished, left)).ToList();
            var said = (FilmForecast.Surest(finished) * 100).ToDouble();
            var line = string.Create(CultureInfo.InvariantCulture, $"| {finished} | {said:0} | {held.Average():0.0} | {held.Min():0.0} |");
            table.Append(line).Append('\n');
            if (said > held.Average())
            {
                outside.Add(line);
            }
        }

        Directory.CreateDirectory(Path.Combine(AppContext.BaseDirectory, "received"));
        File.WriteAllText(Path.Combine(AppContext.BaseDirectory, "received", "surest.md"), table.ToString());
        Assert.True(outside.Count == 0, string.Join("\n", outside));
    }

    // With less stock than that no chance above 99 % could be given.
    static double HeldAtTheTop(Behaviour behaviour, int finished, int left)
    {
        var held = 0;
        Parallel.For(0, Shoots, shoot =>
        {
            var (ground, used) = SimulatedShoot.Play(behaviour, finished, left, (ulong)shoot);
            var drawn = new ForecastDraws(ground, [left], FilmForecast.Seed, draws: 1000);
            if (used <= drawn.Enough(0, 99))
            {
                Interlocked.Increment(ref held);
            }
        });
        return 100.0 * held / Shoots;
    }

    // How often, in a hundred, each figure was enough; and last, the 80 % figure of the plain sample drawn again.
    static double[] Held(Behaviour behaviour, int finished, int left, int shoots, int draws)
    {
        var held = new int[FilmForecast.Percents.Length + 1];
        Parallel.For(0, shoots, shoot =>
        {
            var (ground, used) = SimulatedShoot.Play(behaviour, finished, left, (ulong)shoot);
            Footage[] enough = [.. FilmForecast.Compute(ground, draws).Figures.Select(f => f.Needed), Plain(ground, draws)];
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

    static Footage Plain(ForecastInput ground, int draws)
    {
        var by = new DrawnNumbers(FilmForecast.Seed, 0);
        var sums = Enumerable
            .Range(0, draws)
            .Select(_ =>
                Enumerable.Range(0, ground.ShotsLeft!.Value).Sum(_ => ground.Finished[by.Below(ground.Finished.Length)].Film.Frames)
            );
        var eighty = sums.Order().ElementAt((draws * 80 / 100) - 1);
        return new Footage((long)(eighty * (1 + ground.LossRate.ToDouble())));
    }
}
