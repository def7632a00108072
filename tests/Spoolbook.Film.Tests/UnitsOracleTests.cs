using System.Globalization;
using CsCheck;
using Spoolbook.Film.Exposures;

namespace Spoolbook.Film.Tests;

/// <summary>The trade's sums against GNU units, which is independent of this program.</summary>
public class UnitsOracleTests
{
    const int CasesOfEachKind = 250;

    /// <summary>A sum in our words, the same for <c>units</c>, and our answer.</summary>
    sealed record Case(string What, string Have, string Want, double Ours);

    static readonly Gen<Case>[] _kinds =
    [
        Gen.Select(Gen.Int[0, 400_000], AnyGauge())
            .Select(
                (frames, gauge) =>
                    new Case(
                        $"{frames} fr of {gauge} in metres",
                        $"{frames} / ({gauge.FramesPerFoot.ForUnits()} / ft)",
                        "m",
                        new Footage(frames).Metres(gauge).ToDouble()
                    )
            ),
        Gen.Select(Gen.Int[0, 400_000], AnySpeed())
            .Select(
                (frames, speed) =>
                    new Case(
                        $"{frames} fr at {speed} in minutes",
                        $"{frames} / ({speed.FramesPerSecond.ForUnits()} / s)",
                        "min",
                        (new Footage(frames).Seconds(speed) / 60).ToDouble()
                    )
            ),
        Gen.Select(AnySpeed(), AnyGauge())
            .Select(
                (speed, gauge) =>
                    new Case(
                        $"{gauge} at {speed} in feet a minute",
                        $"{speed.FramesPerSecond.ForUnits()} / ({gauge.FramesPerFoot.ForUnits()} / ft) / s",
                        "ft/min",
                        RunningTime.FeetPerMinute(speed, gauge).ToDouble()
                    )
            ),
        Gen.Select(Gen.Int[1, 3600], AnySpeed())
            .Select(
                (tenths, speed) =>
                    new Case(
                        $"{tenths}/10 degrees at {speed}",
                        $"({tenths}|10 degree / circle) / ({speed.FramesPerSecond.ForUnits()} / s)",
                        "s",
                        ExposureTime.Of(new Shutter(new Ratio(tenths, 10)), speed).Seconds.ToDouble()
                    )
            ),
        Gen.Select(Gen.Int[7, 640], Gen.Int[1, 4000])
            .Select(
                (tenths, denominator) =>
                    new Case(
                        $"EV of {tenths}/10 at 1/{denominator}",
                        $"~Av({tenths}|10) + ~Tv(1|{denominator} s)",
                        "1",
                        ExactEv(tenths / 10.0, denominator)
                    )
            ),
        Gen.Select(Gen.Int[-60, 200], Gen.Int[25, 3200])
            .Select(
                (tenths, index) =>
                    new Case(
                        $"EV {tenths}/10 at {index} in footcandles",
                        $"iv100({tenths}|10) 100 / {index}",
                        "footcandle",
                        MeterLaw.LuxFor(tenths / 10.0, index, PublishedMeterConstants.CFlat) / MeterLaw.LuxInFootcandle
                    )
            ),
        Gen.Int[1, 500].Select(tenths => new Case($"{tenths}/10 DIN", $"Sdeg({tenths}|10)", "1", FilmRating.OfDin(tenths / 10.0))),
        Gen.Select(Gen.Int[0, 4000], AnyGauge(), Gen.Enum<PitchKind>())
            .Select(
                (frames, gauge, stock) =>
                    new Case(
                        $"{frames} fr of {gauge} by true pitch, {stock}",
                        $"{frames} {gauge.Pitch.PerforationsPerFrame} {gauge.Pitch.Of(stock).ForUnits()} mm",
                        "in",
                        (new Footage(frames).TrueMillimetres(gauge, stock) / 25.4m.ToRatio()).ToDouble()
                    )
            ),
    ];

    [ToolFact("units")]
    public void Two_thousand_generated_sums_agree_with_GNU_units()
    {
        var cases = _kinds.SelectMany((kind, i) => kind.Array[CasesOfEachKind].Single(_ => true, seed: $"0000{i + 1}0000001")).ToArray();
        var theirs = Answers([.. cases.Select(c => (c.Have, c.Want))]);

        Assert.Equal(2000, cases.Length);
        Assert.Equal(cases.Length, theirs.Length);
        var wrong = cases
            .Zip(theirs)
            .Where(pair => Math.Abs(pair.First.Ours - pair.Second) > 1e-9 * Math.Max(1, Math.Abs(pair.Second)))
            .Select(pair => FormattableString.Invariant($"{pair.First.What}: {pair.First.Ours}, and units has {pair.Second}"));
        Assert.Empty(wrong);
    }

    // J1 H: the output of `units`.
    [ToolFact("units")]
    public void GNU_units_still_gives_the_recorded_answers()
    {
        var answers = Answers([
            ("400 ft*40/ft/(24/s)", "s"),
            ("~Av(16)+~Tv(1|100 s)", "1"),
            ("iv100(15)", "lx"),
            ("Sdeg(28)", "1"),
            ("24|40 ft/s", "ft/min"),
        ]);

        Assert.Equal(
            [666.6666667, 14.643856, 81920, 501.18723, 36],
            answers.Select(answer =>
                Math.Round(
                    answer,
                    answer > 600 ? 7
                        : answer > 100 ? 5
                        : 6
                )
            )
        );
    }

    static double[] Answers(IReadOnlyList<(string Have, string Want)> conversions) =>
        [
            .. Tools
                .Ask("units", ["--quiet", "--terse", "--output-format", "%.17g"], conversions.SelectMany(c => new[] { c.Have, c.Want }))
                .Select(line => double.Parse(line, CultureInfo.InvariantCulture)),
        ];

    static double ExactEv(double number, int denominator) =>
        MeterLaw.Ev(new Stop(2 * Math.Log2(number)), new ExposureTime(new Ratio(1, denominator)));

    static Gen<Gauge> AnyGauge() => Gen.Int[0, Gauge.All.Count - 1].Select(i => Gauge.All[i]);

    static Gen<Speed> AnySpeed() =>
        Gen.Select(Gen.Int[1, 6400], Gen.OneOf(Gen.Const(1), Gen.Const(100), Gen.Const(1001)), (n, d) => new Speed(new Ratio(n, d)));
}

static class OracleText
{
    /// <summary>A ratio as <c>units</c> writes fractions.</summary>
    public static string ForUnits(this Ratio ratio) => ratio.ToString().Replace('/', '|');

    public static Ratio ToRatio(this decimal value) => Ratio.FromDecimal(value);
}
