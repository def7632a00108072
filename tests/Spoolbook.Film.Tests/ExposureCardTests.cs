using Spoolbook.Film.Exposures;

namespace Spoolbook.Film.Tests;

public class ExposureCardTests
{
    // P2, P4, P5, P6, common practice: 133°, a fifth to the finder, 20 s on a full wind at 24.
    static readonly ExposureCardBody _body = new()
    {
        Speeds = [new(24), new(12), new(64), new(16), new(24)],
        Shutter = new Shutter(133),
        FinderLoss = new Ratio(1, 5),
        Spring = SpringMotor.Running(20, Speed.Normal),
    };

    [Fact]
    public void A_card_has_a_row_for_each_engraved_speed_slowest_first() =>
        Assert.Equal(["12", "16", "24", "64"], ExposureCard.Rows(_body).Select(row => row.Speed.ToString()));

    [Fact]
    public void The_row_of_the_normal_speed_has_everything_the_assistant_needs()
    {
        var row = ExposureCard.Rows(_body).Single(r => r.Speed == Speed.Normal);

        Assert.Equal("1/65 s", row.Marked.ToString());
        Assert.Equal("1/81 s", row.Adapted.ToString());
        Assert.Equal(0, row.StopsFromNormal);
        Assert.Equal(36, row.FeetPerMinute);
        Assert.Equal(20, row.SecondsOnFullWind);
        Assert.Equal(1, row.ApparentSpeed);
    }

    [Fact]
    public void A_slower_row_has_more_light_more_time_and_a_faster_look()
    {
        var row = ExposureCard.Rows(_body)[0];

        Assert.Equal(1, row.StopsFromNormal, 12);
        Assert.Equal(40, row.SecondsOnFullWind);
        Assert.Equal(2, row.ApparentSpeed);
        Assert.Equal(18, row.FeetPerMinute);
    }

    [Fact]
    public void A_body_without_a_spring_has_no_wind() =>
        Assert.All(ExposureCard.Rows(_body with { Spring = null }), row => Assert.Null(row.SecondsOnFullWind));

    [Fact]
    public void The_look_depends_on_the_projector() =>
        Assert.Equal(
            new Ratio(25, 24),
            ExposureCard.Rows(_body with { Projection = new Speed(25) }).Single(r => r.Speed == Speed.Normal).ApparentSpeed
        );

    // 180° at 25 is 1/50 s (Brown, Cinematography: Theory and Practice).
    [Fact]
    public void A_card_counts_from_the_speed_of_the_projector()
    {
        var body = new ExposureCardBody
        {
            Speeds = [new(24), new(25), new(50)],
            Shutter = Shutter.Half,
            Projection = new Speed(25),
        };

        Assert.Equal(new Speed(25), body.Counted);
        Assert.Equal([0.0589, 0, -1], ExposureCard.Rows(body).Select(r => Math.Round(r.StopsFromNormal, 4)));
        Assert.Equal("1/50 s", ExposureCard.Marks(body, ShutterOpening.Usual)[0].Marked.ToString());
        Assert.Equal(new Speed(24), (body with { Speeds = [new(12), new(24), new(32)] }).Counted);
        Assert.Equal(new Speed(16), (body with { Speeds = [new(16), new(24)], Projection = new Speed(18) }).Counted);
    }

    // 22 is the last stop on most rings of 16 mm lenses (common practice). A density of 0.3 takes a stop, 0.6 two and
    // 0.9 three (Eastman Kodak's slides on filters).
    [Theory]
    [InlineData(9, "22", null)]
    [InlineData(10, "22", "ND 0.3")]
    [InlineData(10.5, "16/22", "ND 0.6")]
    [InlineData(9.4, "16/22", "ND 0.3")]
    [InlineData(12, "22", "ND 0.9")]
    [InlineData(6.1, "8", null)]
    public void No_stop_is_given_that_no_lens_can_be_set_to(double wanted, string set, string? filter)
    {
        var lenses = new CardLenses(Stop.OfNumber(1.4), Stop.OfNumber(22), []);
        var stop = lenses.Set(new Stop(wanted));
        Assert.Equal((set, filter, 0), (stop.Stop.ToText(StopStep.Half), stop.Filter, stop.Missing));
        Assert.False(stop.FilterInKit);
    }

    [Fact]
    public void A_density_of_the_kit_comes_first_and_where_light_is_missing_the_card_says_how_much()
    {
        var lenses = new CardLenses(Stop.OfNumber(2.8), Stop.OfNumber(22), [("ND9", 3), ("ND3", 1)]);
        Assert.Equal("ND3", lenses.Set(new Stop(10)).Filter);
        Assert.Equal("ND9", lenses.Set(new Stop(11)).Filter);
        Assert.True(lenses.Set(new Stop(11)).FilterInKit);
        Assert.Equal((Stop.OfNumber(2.8), 1.5), (lenses.Set(new Stop(1.5)).Stop, lenses.Set(new Stop(1.5)).Missing));
        Assert.Equal(new Stop(14), new CardLenses(null, null, []).Set(new Stop(14)).Stop);
    }

    [Fact]
    public void The_marks_of_the_shutter_have_their_times()
    {
        var marks = ExposureCard.Marks(_body, ShutterOpening.Usual);

        Assert.Equal(["1/65 s", "1/87 s", "1/130 s", null], marks.Select(mark => mark.Marked?.ToString()));
        Assert.Equal(["1/81 s", "1/108 s", "1/162 s", null], marks.Select(mark => mark.Adapted?.ToString()));
    }

    [Fact]
    public void The_sunny_day_column_counts_the_finder()
    {
        var column = ExposureCard.SunnyDay(_body, 250, Speed.Normal);

        Assert.Equal(5, column.Length);
        Assert.Equal(DaylightKind.BrightSun, column[1].Kind);
        Assert.Equal(8 + Math.Log2(250 / 81.203), column[1].Stop.Av, 4);
    }
}
