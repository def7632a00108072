using CsCheck;
using Spoolbook.Film.Exposures;

namespace Spoolbook.Film.Tests;

public class ExposureTests
{
    [Fact]
    public void Every_term_is_named_with_its_stops_and_its_reckoning()
    {
        var balance = Exposure.Combine(
            new ExposureConditions
            {
                Speed = new Speed(48),
                Shutter = new Shutter(90),
                Opening = ShutterOpening.QuarterClosed,
                FinderLoss = new Ratio(1, 5),
                Densities = [0.6],
                Filters = [LightFilter.Named("85")!],
                FilterFactors = [4],
                Extension = new LensExtension(25, 25),
                Push = 1,
                Rating = new FilmRating(500, 250),
            }
        );

        string[] lines =
        [
            .. balance.Terms.Select(term => FormattableString.Invariant($"{term.Name}: {term.Stops:0.####} = {term.Reckoning}")),
        ];
        Assert.Equal(
            [
                "speed: -1 = log2 (24 / 48 frames a second)",
                "shutter: -1 = log2 (90° / 180°)",
                "variable shutter: -0.5 = quarter closed, as counted",
                "finder: -0.3219 = log2 0.8, the part that reaches the film",
                "ND 0.6: -1.9932 = -0.6 / log10 2",
                "filter 85: -0.6667 = as tabled",
                "filter factor 4: -2 = -log2 4",
                "extension: -2 = -log2 ((25 + 25) / 25)²",
                "push: 1 = developed for index × 2^1",
                "rating: -1 = log2 (250 / 500)",
            ],
            lines
        );
        Assert.Equal(-9.48175, balance.Total, 5);
    }

    [Fact]
    public void Nothing_changes_where_nothing_is_set()
    {
        var balance = Exposure.Combine(new ExposureConditions());

        Assert.Empty(balance.Terms);
        Assert.Equal(0, balance.Total);
        Assert.Equal(Stop.OfNumber(5.6), balance.StopToSet(Stop.OfNumber(5.6)));
    }

    // D7 H: Cine-Kodak Special manual, p. 26: half the shutter is 11 to 8.
    [Fact]
    public void What_the_film_lacks_the_lens_is_opened_by()
    {
        var balance = Exposure.Combine(new ExposureConditions { Opening = ShutterOpening.HalfClosed });

        Assert.Equal("8", balance.StopToSet(Stop.OfNumber(11))?.ToString());
    }

    [Fact]
    public void Behind_a_closed_shutter_no_stop_helps()
    {
        var balance = Exposure.Combine(new ExposureConditions { Opening = ShutterOpening.Closed, Push = 2 });

        Assert.Equal(Stops.Black, balance.Total);
        Assert.Null(balance.StopToSet(Stop.OfNumber(1.4)));
    }

    [Fact]
    public void A_pull_is_named_a_pull()
    {
        var term = Assert.Single(Exposure.Combine(new ExposureConditions { Push = -1 }).Terms);

        Assert.Equal("pull", term.Name);
        Assert.Equal(-1, term.Stops);
    }

    // P13, common practice: the shutter stays open as long as the release is held.
    [Fact]
    public void A_timed_exposure_takes_the_place_of_speed_and_shutter()
    {
        var conditions = new ExposureConditions
        {
            Timed = new ExposureTime(2),
            Speed = new Speed(12),
            Shutter = new Shutter(90),
            Opening = ShutterOpening.HalfClosed,
        };
        var term = Assert.Single(Exposure.Combine(conditions).Terms);

        Assert.Equal("timed exposure", term.Name);
        Assert.Equal("log2 (2 s / 1/48 s)", term.Reckoning);
        Assert.Equal(Math.Log2(96), term.Stops, 12);
        Assert.Equal(new ExposureTime(2), Exposure.TimeOf(conditions));
    }

    [Fact]
    public void The_time_of_a_frame_is_speed_shutter_and_mark()
    {
        Assert.Equal(48, Exposure.TimeOf(new ExposureConditions())?.Denominator);
        Assert.Equal(
            192,
            Exposure.TimeOf(new ExposureConditions { Speed = new Speed(48), Opening = ShutterOpening.HalfClosed })?.Denominator
        );
        Assert.Null(Exposure.TimeOf(new ExposureConditions { Opening = ShutterOpening.Closed }));
    }

    [Fact]
    public void The_stocks_own_table_adds_what_it_fails_by()
    {
        var table = new ReciprocityTable(new ReciprocityPoint(0.01, 0), new ReciprocityPoint(1, 1));
        var failing = Exposure.Combine(new ExposureConditions { Timed = new ExposureTime(1), Reciprocity = table });
        var beyond = Exposure.Combine(new ExposureConditions { Timed = new ExposureTime(10), Reciprocity = table });
        var black = Exposure.Combine(new ExposureConditions { Opening = ShutterOpening.Closed, Reciprocity = table });

        Assert.Equal("reciprocity failure: the stock's table at 1 s", $"{failing.Terms[^1].Name}: {failing.Terms[^1].Reckoning}");
        Assert.Equal(-1, failing.Terms[^1].Stops);
        Assert.Equal(
            "reciprocity failure: at least: the table ends at 1 s, -1",
            $"{beyond.Terms[^1].Name}: {beyond.Terms[^1].Reckoning}, {beyond.Terms[^1].Stops}"
        );
        Assert.DoesNotContain(black.Terms, term => term.Name == "reciprocity failure");
    }

    [Fact]
    public void The_meter_may_have_answered_for_another_speed_and_shutter()
    {
        var balance = Exposure.Combine(
            new ExposureConditions
            {
                Speed = new Speed(32),
                ReferenceSpeed = new Speed(16),
                Shutter = new Shutter(165),
                ReferenceShutter = new Shutter(165),
            }
        );

        Assert.Equal(-1, balance.Total, 12);
    }

    // D41 H: Eastman Kodak E-142, p. 3: factors multiply.
    [Fact]
    public void Factors_multiply_and_stops_add() =>
        Gen.Double[0.5, 64]
            .Array[1, 6]
            .Sample(factors =>
            {
                var together = Exposure.Combine(new ExposureConditions { FilterFactors = [.. factors] });
                return Math.Abs(together.Total - Stops.FromFactor(factors.Aggregate(1.0, (a, b) => a * b))) < 1e-9;
            });

    [Fact]
    public void Terms_add_up_in_any_order() =>
        Gen.Select(Gen.Double[0, 3].Array[1, 5], Gen.Int[0, LightFilter.All.Length - 1].Array[1, 5], Gen.Int[1, 90])
            .Sample(
                (densities, filters, percent) =>
                {
                    var conditions = new ExposureConditions
                    {
                        Densities = [.. densities],
                        Filters = [.. filters.Select(i => LightFilter.All[i])],
                        FinderLoss = new Ratio(percent, 100),
                        Speed = new Speed(12),
                    };
                    var reversed = conditions with { Densities = [.. densities.Reverse()], Filters = [.. conditions.Filters.Reverse()] };
                    var apart = new[]
                    {
                        new ExposureConditions { Densities = conditions.Densities },
                        new ExposureConditions { Filters = conditions.Filters },
                        new ExposureConditions { FinderLoss = conditions.FinderLoss },
                        new ExposureConditions { Speed = conditions.Speed },
                    };
                    var total = Exposure.Combine(conditions).Total;
                    return Math.Abs(total - Exposure.Combine(reversed).Total) < 1e-9
                        && Math.Abs(total - apart.Sum(one => Exposure.Combine(one).Total)) < 1e-9;
                }
            );

    // From memory: at life size, four times the light.
    [Theory]
    [InlineData(25, 0, 1)]
    [InlineData(25, 25, 4)]
    [InlineData(50, 25, 2.25)]
    public void An_extension_needs_more_light_by_the_square(double focal, double beyond, double factor) =>
        Assert.Equal(factor, new LensExtension(focal, beyond).Factor, 12);

    // D12 H: Eastman Kodak TI2082, §7: pastels need half a stop less at least, dark colours half a stop more.
    [Theory]
    [InlineData("pastel", 0.5, "subject: 0.5 = pastels, or more")]
    [InlineData("dark", -0.5, "subject: -0.5 = dark colours")]
    public void The_subjects_tone_is_worth_half_a_stop(string name, double stops, string line)
    {
        var balance = Exposure.Combine(new ExposureConditions { Subject = SubjectTones.Named(name) ?? throw new ArgumentException(name) });

        var term = Assert.Single(balance.Terms);
        Assert.Equal(stops, balance.Total);
        Assert.Equal(line, FormattableString.Invariant($"{term.Name}: {term.Stops} = {term.Reckoning}"));
    }

    [Fact]
    public void An_average_subject_changes_nothing()
    {
        Assert.Empty(Exposure.Combine(new ExposureConditions { Subject = SubjectTone.Average }).Terms);
        Assert.Equal(0, SubjectTones.Stops(SubjectTone.Average));
        Assert.Equal(["average", "pastel", "dark"], SubjectTones.Names);
        Assert.Null(SubjectTones.Named("pink"));
    }

    [Fact]
    public void Every_kind_of_daylight_has_a_name() =>
        Assert.Equal(
            Enum.GetValues<DaylightKind>(),
            Daylight.Names.Select(name => Daylight.Named(name) ?? throw new ArgumentException(name))
        );

    [Fact]
    public void A_daylight_that_is_not_tabled_is_none() => Assert.Null(Daylight.Named("dusk"));
}
