using Spoolbook.Film.Exposures;
using Spoolbook.Film.Reckonings;
using Spoolbook.Film.Spools;

namespace Spoolbook.Film.Tests;

public class ReckoningTests
{
    // A26 H: Lustig (1980).
    [Fact]
    public void A_length_is_answered_in_every_measure()
    {
        var reckoning = LengthReckoning.Of(FilmLength.Parse("83+38").Value, Gauge.Film16, Gauge.Film35, Speed.Normal, ReckoningUnits.Feet);

        Assert.Equal("83+38 of 16mm in 35mm", reckoning.Title);
        Assert.Equal(
            ["length 209+14 ft+fr", "decimal feet 209.875 ft", "metres 63.97 m", "frames 3358 fr", "time 2:19.92 min:s at 24"],
            reckoning.Answers.Select(Text)
        );
        Assert.Equal(
            [
                "as written 83+38 16mm",
                "frames a foot, 16mm 40 fr/ft",
                "frames 3358 fr",
                "frames a foot, 35mm 16 fr/ft",
                "by true pitch, long 209.3153 ft",
                "by true pitch, short 208.8676 ft",
            ],
            reckoning.Steps.Select(Text)
        );
        Assert.Equal([209.875, 209.875, 63.9699, 3358, 139.9166666666667], reckoning.Answers.Select(line => line.Number!.Value), (a, b) =>
            Math.Abs(a - b) < 1e-9
        );
    }

    [Fact]
    public void A_length_in_its_own_gauge_says_so_once() =>
        Assert.Equal(
            "12s of 16mm",
            LengthReckoning.Of(FilmLength.OfSeconds(12), Gauge.Film16, Gauge.Film16, Speed.Normal, ReckoningUnits.Feet).Title
        );

    [Fact]
    public void A_time_is_in_the_camera_and_on_the_screen()
    {
        var reckoning = TimeReckoning.Of(FilmLength.OfFeet(100), Gauge.Film16, new Speed(48), Speed.Normal, ReckoningUnits.Feet);

        Assert.Equal("100ft of 16mm at 48", reckoning.Title);
        Assert.Equal(
            ["in the camera 1:23.33 min:s", "on the screen 2:46.67 min:s at 24", "looks 0.5 times as fast"],
            reckoning.Answers.Select(Text)
        );
        Assert.Equal(
            [
                "length 100+00 ft+fr",
                "frames 4000 fr",
                "speed 48 fr/s",
                "feet a minute 72 ft/min",
                "metres a minute 21.95 m/min",
                "by true pitch, long 21.95 m/min",
                "by true pitch, short 21.9 m/min",
            ],
            reckoning.Steps.Select(Text)
        );
    }

    [Fact]
    public void An_exposure_is_answered_with_a_stop_and_every_term()
    {
        var reckoning = ExposureReckoning.Of(
            new ExposureQuestion
            {
                Index = 500,
                IncidentLux = 80 * MeterLaw.LuxInFootcandle,
                Conditions = new ExposureConditions
                {
                    Speed = Speed.Normal,
                    Shutter = new Shutter(133),
                    FinderLoss = new Ratio(1, 5),
                    Filters = [LightFilter.Named("85")!],
                },
            }
        );

        Assert.Equal(
            [
                "stop to set 2.8 2/3 nearest third",
                "in tenths 2.8+0.6",
                "from what the meter gives -1.43 stops",
                "time 1/65 s",
                "time to meter for 1/81 s",
            ],
            reckoning.Answers.Select(Text)
        );
        Assert.Equal(
            [
                "index 500 EI",
                "incident light 861.1 lx, with C = 269.1 lx s",
                "the meter gives 5.6+0.1 at 1/48 s",
                "speed 0 stops: log2 (24 / 24 frames a second)",
                "shutter -0.44 stops: log2 (133° / 180°)",
                "finder -0.32 stops: log2 0.8, the part that reaches the film",
                "filter 85 -0.67 stops: as tabled",
                "sum -1.43 stops",
            ],
            reckoning.Steps.Select(Text)
        );
    }

    [Theory]
    [InlineData(true, false, "reflected light 3200 cd/m², with K = 12.5")]
    [InlineData(false, true, "daylight 14.64 EV at 100")]
    public void Light_may_come_from_the_subject_or_from_the_sky(bool reflected, bool daylight, string step)
    {
        var question = new ExposureQuestion
        {
            ReflectedCandelas = reflected ? 3200 : null,
            Daylight = daylight ? DaylightKind.BrightSun : null,
        };
        var reckoning = ExposureReckoning.Of(question);

        Assert.Contains(step, reckoning.Steps.Select(Text));
        Assert.Contains("the meter gives 22+0.1 at 1/48 s", reckoning.Steps.Select(Text));
        Assert.Contains("stop to set 22 nearest third", reckoning.Answers.Select(Text));
    }

    [Fact]
    public void A_metered_stop_needs_no_index()
    {
        var reckoning = ExposureReckoning.Of(
            new ExposureQuestion
            {
                Metered = Stop.OfNumber(5.6),
                Conditions = new ExposureConditions { Push = 1 },
            }
        );

        Assert.Equal(
            ["stop to set 8 nearest third", "in tenths 8", "from what the meter gives +1 stops", "time 1/48 s"],
            reckoning.Answers.Select(Text)
        );
        Assert.Equal("the meter gives 5.6 at 1/48 s", Text(reckoning.Steps[0]));
        Assert.Equal("Exposure", reckoning.Title);
        Assert.Equal(1, reckoning.Steps[^1].Number);
    }

    [Fact]
    public void Without_light_there_are_stops_and_no_stop()
    {
        var reckoning = ExposureReckoning.Of(
            new ExposureQuestion { Conditions = new ExposureConditions { Opening = ShutterOpening.Closed } }
        );

        Assert.Equal(["from what the meter gives black stops", "time black"], reckoning.Answers.Select(Text));
        Assert.All(reckoning.Answers, line => Assert.Null(line.Number));
        Assert.Null(reckoning.Steps[0].Number);
    }

    [Fact]
    public void A_depth_is_answered_in_feet_and_inches()
    {
        var reckoning = DepthReckoning.Of(25, Stop.OfNumber(4), 6 * 304.8, Gauge.Film16, null, ReckoningUnits.Feet);

        Assert.Equal("25 mm at 4 on 16mm", reckoning.Title);
        Assert.Equal(
            ["sharp from", "to", "depth", "hyperfocal", "field across", "field up and down", "width at the focus", "height at the focus"],
            reckoning.Answers.Select(line => line.Label)
        );
        Assert.Equal("hyperfocal 34 ft 3.1 in", Text(reckoning.Answers[3]));
        Assert.Equal("field across 23.2 degrees", Text(reckoning.Answers[4]));
        Assert.Equal("field up and down 17 degrees", Text(reckoning.Answers[5]));
        Assert.Equal(23.19, reckoning.Answers[4].Number!.Value, 2);
        Assert.Equal(
            [
                "focus, from the film plane 6 ft 0 in",
                "f-number 4",
                "circle of confusion 0.015 mm, usual for the gauge",
                "F² / (N c) 10417 mm from the lens",
                "camera aperture 10.26 × 7.49 mm",
            ],
            reckoning.Steps.Select(Text)
        );
        Assert.InRange(reckoning.Answers[0].Number!.Value, 5.0, 5.2);
        Assert.InRange(reckoning.Answers[1].Number!.Value, 7.2, 7.4);
    }

    [Fact]
    public void A_depth_is_answered_in_metres_and_to_infinity()
    {
        var far = DepthReckoning.Of(10, Stop.OfNumber(8), 3000, Gauge.Film16, 0.01, ReckoningUnits.Metres);
        var infinite = DepthReckoning.Of(10, Stop.OfNumber(8), double.PositiveInfinity, Gauge.Film16, null, ReckoningUnits.Metres);

        Assert.Equal("to infinity", Text(far.Answers[1]));
        Assert.Null(far.Answers[1].Number);
        Assert.Equal("hyperfocal 1.26 m", Text(far.Answers[3]));
        Assert.Equal("circle of confusion 0.01 mm, as given", Text(far.Steps[2]));
        Assert.Equal(6, infinite.Answers.Length);
    }

    // B3: 24 × 60 × 0.019 m (a projection primer). By the count of 16 frames in a foot it is 27.43.
    [Fact]
    public void Metres_a_minute_by_true_pitch_are_beside_those_by_the_count()
    {
        Assert.Equal("27.36", RunningTime.TrueMetresPerMinute(Speed.Normal, Gauge.Film35, PitchKind.LongPitch).ToText(2));
        var steps = TimeReckoning.Of(FilmLength.OfFeet(90), Gauge.Film35, Speed.Normal, Speed.Normal, ReckoningUnits.Metres).Steps;
        Assert.Contains("metres a minute 27.43 m/min", steps.Select(Text));
        Assert.Contains("by true pitch, long 27.36 m/min", steps.Select(Text));
    }

    [Fact]
    public void A_depth_is_printed_no_finer_and_no_coarser_than_it_is_known()
    {
        var close = DepthReckoning.Of(100, Stop.OfNumber(2.8), 450, Gauge.Film16, 0.001, ReckoningUnits.Feet);
        Assert.Matches("^depth 0\\.0[0-9]+ in$", Text(close.Answers[2]));
        var hyperfocal = DepthReckoning.Of(25, Stop.OfNumber(4), 10_441, Gauge.Film16, 0.015, ReckoningUnits.Feet);
        Assert.Matches("^to ([0-9]{3}0* ft|infinity)$", Text(hyperfocal.Answers[1]));
    }

    // C17 H: International Projectionist, 1958: processed colour film is 0.0065 in thick, black and white 0.0060.
    [Fact]
    public void Film_of_unknown_thickness_may_be_as_thick_as_colour_film()
    {
        var roll = new FilmRoll(FilmCore.DaylightSpool, FilmCore.Acetate);
        var answers = SpoolReckoning.Of(61, roll, Gauge.Film16, Speed.Normal, ReckoningUnits.Feet, FilmCore.Colour).Answers;
        var thick = new FilmRoll(FilmCore.DaylightSpool, FilmCore.Colour).LengthBetween(61, 1).Least / 304.8;

        Assert.Equal(0.0065 * 25.4, FilmCore.Colour, 1e-12);
        Assert.Equal(thick, answers[1].Number!.Value, 0.02);
        Assert.StartsWith("at least, 1 mm less and thick film 40+", Text(answers[1]), StringComparison.Ordinal);
    }

    [Fact]
    public void A_spool_is_answered_with_what_a_millimetre_makes()
    {
        var roll = new FilmRoll(FilmCore.DaylightSpool, FilmCore.Acetate);
        var reckoning = SpoolReckoning.Of(61, roll, Gauge.Film16, Speed.Normal, ReckoningUnits.Feet);

        Assert.Equal("61 mm of 16mm on a spool", reckoning.Title);
        Assert.Equal(
            ["left 45+35 ft+fr", "at least, 1 mm less 43+33 ft+fr", "at most, 1 mm more 47+38 ft+fr", "runs 1:16 min:s at 24"],
            reckoning.Answers.Select(Text)
        );
        Assert.Equal(
            ["diameter over the film, D 61 mm", "core, d 31.75 mm", "thickness of the film, t 0.1524 mm", "π (D² − d²) / (4 t) 13.98 m"],
            reckoning.Steps.Select(Text)
        );
        Assert.Equal("left 13.98 m", Text(SpoolReckoning.Of(61, roll, Gauge.Film16, Speed.Normal, ReckoningUnits.Metres).Answers[0]));
    }

    // F9 H: Carucci.
    [Fact]
    public void A_time_lapse_is_answered_with_its_interval()
    {
        var lapse = TimeLapse.Solve(new Speed(30), @event: 10_800, screenTime: 30).Value;
        var reckoning = LapseReckoning.Of(lapse, Gauge.Film16, new Speed(30), new Ratio(1, 8), ReckoningUnits.Feet);

        Assert.Equal(
            [
                "interval 12 s",
                "frames 900 fr",
                "film 22+20 ft+fr",
                "on the screen 30 s at 30",
                "looks 360 times as fast",
                "longest exposure 11.875 s",
            ],
            reckoning.Answers.Select(Text)
        );
        Assert.Equal("Time-lapse", reckoning.Title);
        Assert.Equal(["event 10800 s", "event / frames 12 s", "to move the film 0.125 s"], reckoning.Steps.Select(Text));
        Assert.Equal(
            "longest exposure the camera is slower than the interval",
            Text(LapseReckoning.Of(lapse, Gauge.Film16, Speed.Normal, 12, ReckoningUnits.Feet).Answers[^1])
        );
        Assert.Equal("film 6.86 m", Text(LapseReckoning.Of(lapse, Gauge.Film16, Speed.Normal, 12, ReckoningUnits.Metres).Answers[2]));
    }

    static string Text(ReckoningLine line) => $"{line.Label} {line.Value} {line.Unit}".TrimEnd();

    [Theory]
    [InlineData(ReckoningUnits.Feet, "length decimal feet metres frames time", "ft+fr")]
    [InlineData(ReckoningUnits.Metres, "metres length decimal feet frames time", "m")]
    public void The_measure_that_was_asked_for_comes_first(ReckoningUnits units, string labels, string inCamera)
    {
        var length = LengthReckoning.Of(FilmLength.OfFeet(100), Gauge.Film16, Gauge.Film16, Speed.Normal, units);
        var time = TimeReckoning.Of(FilmLength.OfFeet(100), Gauge.Film16, Speed.Normal, Speed.Normal, units);

        Assert.Equal(labels, string.Join(' ', length.Answers.Select(line => line.Label)));
        Assert.Equal(inCamera, time.Steps[0].Unit);
    }

    [Fact]
    public void A_time_before_the_stocks_table_is_reported_and_not_counted()
    {
        var asked = new ExposureQuestion
        {
            Conditions = new() { Timed = new ExposureTime(new Ratio(1, 2)), Reciprocity = new ReciprocityTable(new(1, 0), new(10, 1)) },
        };

        var line = Assert.Single(ExposureReckoning.Of(asked).Steps, step => step.Label == "reciprocity failure");
        Assert.Equal(("not counted", "the stock's table says nothing of 0.5 s"), (line.Value, line.Unit));
    }

    // F14 M: Eastman Kodak F-4017, from memory: 1 s becomes 2 s. Of 1 s with the lens opened a table of such lines says nothing.
    [Fact]
    public void A_table_of_corrected_times_begins_with_its_shortest_held()
    {
        var asked = new ExposureQuestion
        {
            Conditions = new() { Timed = new ExposureTime(1), Reciprocity = new ReciprocityTable(ReciprocityPoint.Parse("1s:2s").Value) },
        };
        var reckoning = ExposureReckoning.Of(asked);

        Assert.Contains("or held open, lens as metered 2 s in place of opening up", reckoning.Answers.Select(Text));
        Assert.Contains("reciprocity failure not counted for 1 s the stock's table has only the longer time", reckoning.Steps.Select(Text));
    }

    // As the check of the takes has it: film held open longer fails no less (common practice).
    [Fact]
    public void Beyond_the_end_of_the_stocks_table_its_last_line_is_the_least()
    {
        var asked = new ExposureQuestion
        {
            Conditions = new() { Timed = new ExposureTime(20), Reciprocity = new ReciprocityTable(new(1, 0), new(10, 1)) },
        };
        var reckoning = ExposureReckoning.Of(asked);

        Assert.Contains("reciprocity failure at least 1 stops: the table ends at 10 s, so test it", reckoning.Answers.Select(Text));
        Assert.Contains("reciprocity failure -1 stops: at least: the table ends at 10 s", reckoning.Steps.Select(Text));
        Assert.Equal(Math.Log2(20 * 48) - 1, reckoning.Answers[0].Number!.Value, 9);
    }

    // F14 M: Eastman Kodak F-4017, from memory: 10 s becomes 50 s.
    [Fact]
    public void A_maker_who_prints_corrected_times_is_answered_with_the_time()
    {
        var table = new ReciprocityTable(
            ReciprocityPoint.Parse("1s:2s").Value,
            ReciprocityPoint.Parse("10s:50s").Value,
            ReciprocityPoint.Parse("100s:1200s").Value
        );
        var asked = new ExposureQuestion
        {
            Conditions = new() { Timed = new ExposureTime(10), Reciprocity = table },
        };

        Assert.Contains("or held open, lens as metered 50 s in place of opening up", ExposureReckoning.Of(asked).Answers.Select(Text));
    }

    // Nobody holds a shutter open longer than the interval leaves, so the fraction is rounded down (computed).
    [Theory]
    [InlineData(66, "1/3 s", 0.34)]
    [InlineData(68, "1/4 s", 0.32)]
    [InlineData(25, "0.75 s", 0.75)]
    public void The_longest_exposure_is_written_as_a_shutter_dial_reads(int hundredths, string text, double seconds)
    {
        var lapse = TimeLapse.Solve(Speed.Normal, interval: 1, @event: 4).Value;
        var line = LapseReckoning.Of(lapse, Gauge.Film16, Speed.Normal, new Ratio(hundredths, 100), ReckoningUnits.Feet).Answers[^1];

        Assert.Equal($"longest exposure {text}", Text(line));
        Assert.Equal(seconds, line.Number!.Value, 9);
    }
}
