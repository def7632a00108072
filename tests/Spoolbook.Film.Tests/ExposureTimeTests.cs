using CsCheck;

namespace Spoolbook.Film.Tests;

public class ExposureTimeTests
{
    // D1 H: angle / (360 × speed), B. Brown, Cinematography, p. 208; a meter's manual, p. 15.
    [Theory]
    [InlineData(270, 24, 32)] // D2 H: Brown, table 10.6, as in the rows below
    [InlineData(180, 24, 48)] // D2 H
    [InlineData(172.8, 24, 50)] // D2 H
    [InlineData(144, 24, 60)] // D2 H
    [InlineData(90, 24, 96)] // D2 H
    [InlineData(72, 24, 120)] // D2 H
    [InlineData(180, 25, 50)] // D3 H: Brown
    [InlineData(180, 16, 32)] // D9 H: L. P. Clerc, Photography, 900: often 1/32 at 16
    [InlineData(45, 6, 48)] // D46 M: forum answer by a cinematographer: 45° at 6 is 180° at 24
    public void A_shutter_and_a_speed_make_a_time(double degrees, int speed, int denominator) =>
        Assert.Equal(denominator, Time(degrees, speed).Denominator);

    [Theory]
    // The next row: D4 H: Cine-Kodak Special II instructions, p. 28, as in the rows below;
    // D6 H: single frames as at 8
    [InlineData(165, 8, "1/17 s", 17.45)]
    [InlineData(165, 16, "1/35 s", 34.91)] // D4 H
    [InlineData(165, 24, "1/52 s", 52.36)] // D4 H
    [InlineData(165, 32, "1/70 s", 69.82)] // D4 H
    [InlineData(82.5, 8, "1/35 s", 34.91)] // D5 H; D6 H: single frames as at 8
    [InlineData(82.5, 16, "1/70 s", 69.82)] // D5 H
    [InlineData(82.5, 24, "1/105 s", 104.73)] // D5 H
    [InlineData(82.5, 32, "1/140 s", 139.64)] // D5 H
    [InlineData(133, 24, "1/65 s", 64.96)] // P4, P5, common practice
    public void A_time_is_printed_as_camera_makers_print_it(double degrees, int speed, string text, double denominator)
    {
        Assert.Equal(text, Time(degrees, speed).ToString());
        Assert.Equal(denominator, Time(degrees, speed).Denominator.ToDouble(), 2);
    }

    // Computed: 1/x s at 12, 16, 18, 24, 25, 32, 48 and 64, and stops from 180°. D8 M: Battison, p. 140: 170° is usual in 16 mm.
    [Theory]
    [InlineData(133, -0.437, 32.48, 43.31, 48.72, 64.96, 67.67, 86.62, 129.92, 173.23)]
    [InlineData(135, -0.415, 32.00, 42.67, 48.00, 64.00, 66.67, 85.33, 128.00, 170.67)]
    [InlineData(144, -0.322, 30.00, 40.00, 45.00, 60.00, 62.50, 80.00, 120.00, 160.00)]
    [InlineData(165, -0.126, 26.18, 34.91, 39.27, 52.36, 54.55, 69.82, 104.73, 139.64)]
    [InlineData(170, -0.082, 25.41, 33.88, 38.12, 50.82, 52.94, 67.76, 101.65, 135.53)]
    [InlineData(172.8, -0.059, 25.00, 33.33, 37.50, 50.00, 52.08, 66.67, 100.00, 133.33)]
    [InlineData(175, -0.041, 24.69, 32.91, 37.03, 49.37, 51.43, 65.83, 98.74, 131.66)]
    [InlineData(180, 0, 24.00, 32.00, 36.00, 48.00, 50.00, 64.00, 96.00, 128.00)]
    public void Times_and_stops_of_a_shutter(double degrees, double stops, params double[] denominators)
    {
        int[] speeds = [12, 16, 18, 24, 25, 32, 48, 64];

        Assert.All(speeds.Zip(denominators), row => Assert.Equal(row.Second, Time(degrees, row.First).Denominator.ToDouble(), 2));
        Assert.Equal(stops, Opening(degrees).StopsOver(Shutter.Half), 3);
    }

    // D7 H: Cine-Kodak Special manuals: doubling the speed or halving the shutter is one stop.
    [Fact]
    public void Twice_the_speed_and_half_the_shutter_are_a_stop_each()
    {
        Assert.Equal(-1, Time(165, 32).StopsOver(Time(165, 16)), 12);
        Assert.Equal(-1, Time(82.5, 16).StopsOver(Time(165, 16)), 12);
    }

    // E1 H: I. Vásárhelyi (1965): a fifth to the finder. E2 H: computed. P4, common practice: 20 to 25 %.
    [Theory]
    [InlineData(20, 0.322)]
    [InlineData(25, 0.415)]
    public void A_finder_takes_part_of_the_light(int percent, double stops)
    {
        var marked = Time(133, 24);

        Assert.Equal(-stops, marked.Adapted(new Ratio(percent, 100)).StopsOver(marked), 3);
    }

    // E3 H: computed, 1/81.2; P5: charted as 1/80, from memory, within 2 %.
    [Fact]
    public void The_time_to_meter_for_is_less_what_the_finder_takes()
    {
        var adapted = Time(133, 24).Adapted(new Ratio(1, 5));

        Assert.Equal(81.2, adapted.Denominator.ToDouble(), 1);
        Assert.Equal("1/81 s", adapted.ToString());
        Assert.InRange(adapted.Denominator.ToDouble() / 80, 0.98, 1.02);
    }

    [Theory]
    [InlineData(-1)]
    [InlineData(100)]
    public void A_finder_leaves_some_light(int percent) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => default(ExposureTime).Adapted(new Ratio(percent, 100)));

    // P3, common practice.
    [Fact]
    public void A_quarter_closed_shutter_costs_half_a_stop()
    {
        Assert.Equal(-0.5, ShutterOpening.QuarterClosed.Stops);
        Assert.Equal(-0.415, ShutterOpening.QuarterClosed.ExactStops, 3);
    }

    [Fact]
    public void A_half_closed_shutter_costs_one_stop()
    {
        Assert.Equal(-1, ShutterOpening.HalfClosed.Stops);
        Assert.Equal(-1, ShutterOpening.HalfClosed.ExactStops);
    }

    [Fact]
    public void A_closed_shutter_leaves_the_frame_black()
    {
        Assert.True(ShutterOpening.Closed.IsBlack);
        Assert.Equal(Stops.Black, ShutterOpening.Closed.Stops);
        Assert.Equal(Stops.Black, ShutterOpening.Closed.ExactStops);
        Assert.Null(Time(180, 24).At(ShutterOpening.Closed));
    }

    [Fact]
    public void The_usual_marks_go_from_open_to_closed()
    {
        Assert.Equal(["open", "quarter closed", "half closed", "closed"], ShutterOpening.Usual.Select(mark => mark.Name));
        Assert.Equal(0, ShutterOpening.Open.Stops);
        Assert.False(ShutterOpening.Open.IsBlack);
        Assert.Equal(96, Time(180, 24).At(ShutterOpening.HalfClosed)?.Denominator);
        Assert.Equal(64, Time(180, 24).At(ShutterOpening.QuarterClosed)?.Denominator);
    }

    [Fact]
    public void A_users_own_mark_counts_its_opening()
    {
        Assert.Equal(-2, ShutterOpening.ByOpening("nearly closed", new Ratio(1, 4)).Stops);
        Assert.Equal(0, ShutterOpening.ByOpening("open", 1).Stops);
        Assert.True(ShutterOpening.ByOpening("closed", 0).IsBlack);
        Assert.Throws<ArgumentOutOfRangeException>(() => ShutterOpening.ByOpening("wider than open", new Ratio(5, 4)));
        Assert.Throws<ArgumentOutOfRangeException>(() => ShutterOpening.ByOpening("less than closed", new Ratio(-1, 4)));
    }

    [Theory]
    [InlineData(0.5, "0.5 s")]
    [InlineData(12, "12 s")]
    [InlineData(0.34, "1/3 s")]
    [InlineData(0.36, "1/3 s")]
    [InlineData(0.4, "0.4 s")]
    [InlineData(0.25, "1/4 s")]
    [InlineData(0.32, "1/3 s")]
    public void A_long_time_is_written_in_seconds(double seconds, string text) =>
        Assert.Equal(text, new ExposureTime(Ratio.FromDecimal((decimal)seconds)).ToString());

    [Theory]
    [InlineData(0)]
    [InlineData(361)]
    [InlineData(-1)]
    public void A_shutter_opens_up_to_a_full_turn(int degrees) => Assert.Throws<ArgumentOutOfRangeException>(() => new Shutter(degrees));

    [Fact]
    public void The_defaults_are_a_half_turn_and_a_second()
    {
        Assert.Equal(180, default(Shutter).Degrees);
        Assert.Equal(360, new Shutter(360).Degrees);
        Assert.Equal("172.8°", Opening(172.8).ToString());
        Assert.Equal(1, default(ExposureTime).Seconds);
        Assert.Throws<ArgumentOutOfRangeException>(() => new ExposureTime(0));
    }

    [Fact]
    public void Times_are_ordered_as_their_seconds_are() =>
        Gen.Select(Gen.Int[1, 5], Gen.Int[1, 5])
            .Sample(
                (a, b) =>
                {
                    var (x, y) = (new ExposureTime(a), new ExposureTime(b));
                    return (x < y) == (a < b) && (x > y) == (a > b) && (x <= y) == (a <= b) && (x >= y) == (a >= b);
                }
            );

    static Shutter Opening(double degrees) => new(Ratio.FromDecimal((decimal)degrees));

    static ExposureTime Time(double degrees, int speed) => ExposureTime.Of(Opening(degrees), new Speed(speed));

    [Fact]
    public void A_third_of_a_second_is_still_written_as_a_fraction() => Assert.Equal("1/3 s", new ExposureTime(new Ratio(1, 3)).ToString());

    [Fact]
    public void A_camera_without_a_reflex_finder_loses_nothing() => Assert.Equal(Time(180, 24), Time(180, 24).Adapted(0));

    [Fact]
    public void A_mark_is_known_by_its_name_in_full_and_in_short()
    {
        Assert.Same(ShutterOpening.HalfClosed, ShutterOpening.Named("half"));
        Assert.Same(ShutterOpening.QuarterClosed, ShutterOpening.Named("quarter closed"));
        Assert.Same(ShutterOpening.Open, ShutterOpening.Named("open"));
        Assert.Same(ShutterOpening.Closed, ShutterOpening.Named("closed"));
        Assert.Null(ShutterOpening.Named("ajar"));
    }
}
