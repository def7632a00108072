using System.Numerics;
using Spoolbook.Film;
using Spoolbook.Shoot.Forecasts;

namespace Spoolbook.Shoot.Tests.Forecasts;

/// <summary>
/// The forecast of five finished shots without random draws, by the method in FORECAST.md: how often each shot is
/// drawn, and what the rolls lose, by exact convolution in whole numbers; the widening of the sample, by the chi-square
/// distribution of four degrees of freedom, whose distribution function is 1 − e^(−x/2)(1 + x/2), in steps of a
/// hundredth.
/// </summary>
sealed class ExactForecast
{
    const int Shots = 5;
    const double Step = 0.01;
    const int Steps = 4000;
    const double Shift = 0.15;
    const double Fitted = 1.04 + (0.2 / Shots);

    readonly List<(int[] Times, double Chance)> _drawn;
    readonly List<(double Factor, double Chance)> _losses;
    readonly double[] _scaled;
    readonly double _average;

    public ExactForecast(ForecastInput ground)
    {
        Assert.Equal(Shots, ground.Finished.Length);
        _average = ground.Finished.Average(s => s.Film.Frames);
        _scaled = [.. ground.Finished.Select(s => Math.Log((s.Film.Frames / _average) + Shift))];
        _drawn = Drawn(ground.ShotsLeft!.Value);
        _losses =
        [
            .. Sums([.. ground.Lost.Select(l => l.Frames)]).Select(s => (1 + (s.Sum / (double)ground.FilmOfShots.Frames), s.Chance)),
        ];
    }

    /// <summary>The chance that a rest of the shoot needs no more than this.</summary>
    public double ChanceOf(Footage film)
    {
        var centre = _scaled.Average();
        var chance = 0.0;
        for (var i = 0; i < Steps; i++)
        {
            var weight = ChiSquare((i + 1) * Step) - ChiSquare(i * Step);
            var widened = Fitted * Math.Sqrt(Shots / ((i + 0.5) * Step));
            double[] shots = [.. _scaled.Select(s => _average * Math.Clamp(Math.Exp(centre + (widened * (s - centre))) - Shift, 0, 1000))];
            foreach (var (times, ofShots) in _drawn)
            {
                var needed = 0.0;
                for (var shot = 0; shot < Shots; shot++)
                {
                    needed += times[shot] * shots[shot];
                }

                foreach (var (factor, ofLoss) in _losses)
                {
                    chance += Math.Ceiling(needed * factor) <= film.Frames ? weight * ofShots * ofLoss : 0;
                }
            }
        }

        return chance;
    }

    static double ChiSquare(double x) => 1 - (Math.Exp(-x / 2) * (1 + (x / 2)));

    // How often each of five shots is drawn for so many shots left, from five that were themselves drawn from the five:
    // 5^5 · 5^left equal cases, all counted.
    static List<(int[] Times, double Chance)> Drawn(int left)
    {
        var samples = Spread(Shots, Shots).ToList();
        var cases = BigInteger.Pow(Shots, Shots + left);
        return
        [
            .. from times in Spread(Shots, left)
            let ways = samples.Aggregate(BigInteger.Zero, (sum, sample) =>
                sum + (Orders(sample) * Orders(times) * sample.Zip(times, (s, t) => BigInteger.Pow(s, t)).Aggregate(BigInteger.Multiply))
            )
            select (times, Math.Exp(BigInteger.Log(ways) - BigInteger.Log(cases))),
        ];
    }

    // Every way to distribute so many draws over so many things.
    static IEnumerable<int[]> Spread(int over, int draws) =>
        over == 1
            ?
            [
                [draws],
            ]
            : from first in Enumerable.Range(0, draws + 1)
              from rest in Spread(over - 1, draws - first)
              select (int[])[first, .. rest];

    // In how many orders they can be drawn.
    static BigInteger Orders(int[] times) =>
        Factorial(times.Sum()) / times.Aggregate(BigInteger.One, (product, t) => product * Factorial(t));

    static BigInteger Factorial(int n) => Enumerable.Range(1, n).Aggregate(BigInteger.One, (product, i) => product * i);

    // The sum of as many draws from some values as there are values.
    static List<(long Sum, double Chance)> Sums(long[] values)
    {
        var sums = new Dictionary<long, BigInteger> { [0] = 1 };
        for (var draw = 0; draw < values.Length; draw++)
        {
            sums = (from sum in sums from value in values group sum.Value by sum.Key + value).ToDictionary(
                g => g.Key,
                g => g.Aggregate(BigInteger.Add)
            );
        }

        var cases = (double)BigInteger.Pow(Math.Max(1, values.Length), values.Length);
        return [.. sums.Select(s => (s.Key, (double)s.Value / cases))];
    }
}
