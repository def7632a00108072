using System.Globalization;
using CsCheck;

namespace Spoolbook.Film.Tests;

/// <summary>
/// J2, J3: the desk calculators qalc and bc, two more oracles independent of this program. Where one is not installed
/// its test is skipped, or fails if SPOOLBOOK_REQUIRE_TOOLS is 1.
/// </summary>
public class QalcOracleTests
{
    // qalc waits some 20 ms for each line that it reads from a file.
    const int Cases = 60;

    [ToolFact("qalc")]
    public void Lengths_times_and_exposures_agree_with_a_desk_calculator()
    {
        var gauges = Gauge.All;
        var cases = Gen.Select(Gen.Int[1, 400_000], Gen.Int[0, gauges.Count - 1], Gen.Int[8, 640], Gen.Int[1, 3600])
            .Array[Cases]
            .Single(_ => true, seed: "0000q10000001")
            .SelectMany(
                ((int Frames, int Gauge, int TenthSpeed, int TenthDegrees) c) =>
                {
                    var (film, gauge, speed) = (new Footage(c.Frames), gauges[c.Gauge], new Speed(new Ratio(c.TenthSpeed, 10)));
                    return new (string Sum, double Ours)[]
                    {
                        ($"{c.Frames} / ({gauge.FramesPerFoot}) * ft to m", film.Metres(gauge).ToDouble()),
                        ($"{c.Frames} / ({c.TenthSpeed} / 10) * s to s", film.Seconds(speed).ToDouble()),
                        (
                            $"log2(({c.TenthDegrees} / 10 / 180) / ({c.TenthSpeed} / 10 / 24))",
                            ExposureTime
                                .Of(new Shutter(new Ratio(c.TenthDegrees, 10)), speed)
                                .StopsOver(ExposureTime.Of(Shutter.Half, Speed.Normal))
                        ),
                    };
                }
            )
            .ToArray();
        var answers = Ask("qalc", ["-t", "-set", "precision 17", "-f", "-"], cases.Select(c => c.Sum));

        Assert.Equal(cases.Length, answers.Length);
        Assert.Empty(
            cases
                .Zip(answers)
                .Where(pair => Math.Abs(pair.First.Ours - pair.Second) > 1e-9 * Math.Max(1, Math.Abs(pair.Second)))
                .Select(pair => FormattableString.Invariant($"{pair.First.Sum}: {pair.First.Ours}, and qalc has {pair.Second}"))
        );
    }

    [ToolFact("bc")]
    public void Ratios_are_what_arithmetic_of_forty_digits_makes_of_them()
    {
        var cases = Gen.Select(Gen.Int[1, 1_000_000], Gen.Int[1, 9999], Gen.Int[1, 1_000_000], Gen.Int[1, 9999])
            .Array[300]
            .Single(_ => true, seed: "0000b10000001");
        var sums = cases.Select(c =>
            (
                new Ratio(c.Item1, c.Item2) + new Ratio(c.Item3, c.Item4),
                new Ratio(c.Item1, c.Item2) * new Ratio(c.Item3, c.Item4),
                new Ratio(c.Item1, c.Item2) / new Ratio(c.Item3, c.Item4)
            )
        );
        var ours = sums.SelectMany(sum => new[] { sum.Item1, sum.Item2, sum.Item3 }).ToArray();
        var theirs = Ask(
            "bc",
            ["-q"],
            [
                "scale=40",
                .. cases.SelectMany(c =>
                    new[]
                    {
                        $"{c.Item1}/{c.Item2}+{c.Item3}/{c.Item4}",
                        $"({c.Item1}/{c.Item2})*({c.Item3}/{c.Item4})",
                        $"({c.Item1}/{c.Item2})/({c.Item3}/{c.Item4})",
                    }
                ),
            ]
        );

        Assert.Equal(900, theirs.Length);
        Assert.All(ours.Zip(theirs), pair => Assert.Equal(pair.Second, pair.First.ToDouble(), 1e-12 * Math.Max(1, pair.Second)));
    }

    static double[] Ask(string program, string[] options, IEnumerable<string> lines) =>
        [.. Tools.Ask(program, options, lines).Select(Number)];

    // qalc writes a typographer's minus, and the unit after the number.
    static double Number(string line) => double.Parse(line.Split(' ')[0].Replace('\u2212', '-'), CultureInfo.InvariantCulture);
}
