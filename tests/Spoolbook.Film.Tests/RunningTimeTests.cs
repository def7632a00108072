using CsCheck;

namespace Spoolbook.Film.Tests;

public class RunningTimeTests
{
    static readonly Gen<Speed> _speeds = Gen.Select(Gen.Int[1, 6000], Gen.Int[1, 50], (n, d) => new Speed(new Ratio(n, d)));

    [Theory]
    [InlineData("16mm", 24, 36)] // B1 H: encyclopaedia
    [InlineData("35mm", 24, 90)] // B2 H: encyclopaedia
    [InlineData("35mm", 16, 60)] // B2 H: encyclopaedia
    // Computed, as in every row below.
    [InlineData("16mm", 8, 12)]
    [InlineData("16mm", 12, 18)]
    [InlineData("16mm", 16, 24)]
    [InlineData("16mm", 18, 27)]
    [InlineData("16mm", 25, 37.5)]
    [InlineData("16mm", 30, 45)]
    [InlineData("16mm", 32, 48)]
    [InlineData("16mm", 48, 72)]
    [InlineData("16mm", 64, 96)]
    [InlineData("35mm", 18, 67.5)]
    [InlineData("35mm", 25, 93.75)]
    [InlineData("35mm 3-perf", 24, 67.5)]
    [InlineData("35mm 2-perf", 24, 45)]
    [InlineData("Super 8", 18, 15)]
    [InlineData("Super 8", 24, 20)]
    [InlineData("8mm", 16, 12)]
    [InlineData("8mm", 24, 18)]
    public void Film_runs_so_many_feet_a_minute(string gauge, int speed, double feet) =>
        Assert.Equal(feet, RunningTime.FeetPerMinute(new Speed(speed), Gauge.Named(gauge)!).ToDouble());

    // B3 H: projection primer, 24 × 60 × 0.019; the trade's count of frames makes 27.43.
    [Fact]
    public void Metres_a_minute_say_whether_they_are_true_or_nominal()
    {
        Assert.Equal(27.36, RunningTime.TrueMetresPerMinute(Speed.Normal, Gauge.Film35, PitchKind.LongPitch).ToDouble(), 2);
        Assert.Equal(27.432, RunningTime.MetresPerMinute(Speed.Normal, Gauge.Film35).ToDouble(), 10);
    }

    [Theory]
    [InlineData("16mm", 3600)] // B4 H: encyclopaedia, as in the rows below
    [InlineData("9.5mm", 3600)] // B4 H
    [InlineData("35mm", 9000)] // B4 H
    [InlineData("8mm", 1800)] // B4 H
    [InlineData("Super 8", 2000)] // B4 H
    public void A_hundred_minutes_of_sound_film_are_so_many_feet(string gauge, int feet) =>
        Assert.Equal(feet, Footage.RunningFor(6000, Speed.Normal).Feet(Gauge.Named(gauge)!));

    [Theory]
    [InlineData("16mm", 400, 11)] // B5 H: Battison, p. 14; Metcalfe and Christensen, p. 209
    [InlineData("35mm", 1000, 11)] // B6 H: Battison, p. 14; B7 H: Filmmaking in Action, ch. 6, 11.1
    public void A_full_reel_runs_eleven_minutes_in_round_figures(string gauge, int feet, int minutes)
    {
        var seconds = Film(feet, gauge).Seconds(Speed.Normal);

        Assert.Equal(minutes, (seconds / 60).Round());
        Assert.Equal("11.1", (seconds / 60).ToText(1));
        Assert.Equal("11:06.67", RunningTime.Text(seconds, 2));
    }

    [Theory]
    [InlineData(24, "2:30")] // B10 H: encyclopaedia; cine history page
    [InlineData(18, "3:20")] // B10 H
    [InlineData(16, "3:45")] // computed
    [InlineData(25, "2:24")] // computed
    public void A_Super_8_cartridge_runs_so_long(int speed, string time) =>
        Assert.Equal(time, RunningTime.Text(Film(50, "Super 8").Seconds(new Speed(speed)), 0));

    // B11 H: SMPTE 200M-2003 2.1.1; its 50.919 ft was rounded by way of metres, 0.1667 in makes 50.927.
    [Theory]
    [InlineData(3666, 15.52, 50.919)]
    [InlineData(3715, 15.73, 51.608)]
    public void A_Super_8_cartridge_holds_so_much_by_true_pitch(long pitches, double metres, double feet)
    {
        var millimetres = new Footage(pitches).TrueMillimetres(Gauge.Super8, PitchKind.LongPitch);

        Assert.Equal(metres, millimetres.ToDouble() / 1000, 2);
        Assert.Equal(feet, (millimetres / Length.MillimetresPerFoot).ToDouble(), 0.01);
    }

    // B12 H: SMPTE 200M-2003 2.1.2. A3 H: 3600 frames in 50 ft.
    [Fact]
    public void Fifty_feet_of_Super_8_come_back_as_3600_frames() => Assert.Equal(3600, Film(50, "Super 8").Frames);

    // Computed; `units` prints the same.
    [Theory]
    // B16 H: C. Hill, Cine-Film Projection, p. 66: reels of 50, 100, 200, 400, 800 and 1600 ft. B15 H: encyclopaedia: stock of 100 and 400
    // ft.
    [InlineData(50, "2:05.00", "1:51.11", "1:23.33", "1:20.00")]
    [InlineData(100, "4:10.00", "3:42.22", "2:46.67", "2:40.00")]
    [InlineData(200, "8:20.00", "7:24.44", "5:33.33", "5:20.00")]
    [InlineData(400, "16:40.00", "14:48.89", "11:06.67", "10:40.00")]
    [InlineData(800, "33:20.00", "29:37.78", "22:13.33", "21:20.00")]
    [InlineData(1000, "41:40.00", "37:02.22", "27:46.67", "26:40.00")]
    [InlineData(1200, "50:00.00", "44:26.67", "33:20.00", "32:00.00")]
    [InlineData(1600, "66:40.00", "59:15.56", "44:26.67", "42:40.00")]
    public void Running_times_of_16mm(int feet, string at16, string at18, string at24, string at25)
    {
        string[] times = [at16, at18, at24, at25];
        int[] speeds = [16, 18, 24, 25];

        Assert.Equal(times, speeds.Select(speed => RunningTime.Text(Film(feet, "16mm").Seconds(new Speed(speed)), 2)));
    }

    [Theory]
    [InlineData(16, "16:40.00")]
    [InlineData(18, "14:48.89")]
    [InlineData(24, "11:06.67")]
    [InlineData(25, "10:40.00")]
    public void Running_times_of_a_thousand_feet_of_35mm(int speed, string time) =>
        Assert.Equal(time, RunningTime.Text(Film(1000, "35mm").Seconds(new Speed(speed)), 2));

    // B17 M: a lab's film school: running time is feet over 36.
    [Fact]
    public void At_24_the_minutes_are_the_feet_over_36() => Assert.Equal(new Ratio(400, 36), Film(400, "16mm").Seconds(Speed.Normal) / 60);

    // P2, common practice: at 16 or 12 the subject looks faster, at 32, 48 or 64 slower.
    [Theory]
    [InlineData(12, 2)]
    [InlineData(16, 1.5)]
    [InlineData(24, 1)]
    [InlineData(32, 0.75)]
    [InlineData(48, 0.5)]
    [InlineData(64, 0.375)]
    public void A_slow_camera_makes_a_fast_subject(int camera, double looks) =>
        Assert.Equal(looks, RunningTime.ApparentSpeed(new Speed(camera), Speed.Normal).ToDouble());

    [Fact]
    public void Screen_time_is_the_same_film_at_the_projectors_speed() =>
        Gen.Select(Gen.Long[0, 100_000], _speeds, _speeds)
            .Sample(
                (frames, camera, projection) =>
                    RunningTime.ScreenSeconds(new Footage(frames).Seconds(camera), camera, projection)
                    == new Footage(frames).Seconds(projection)
            );

    [Theory]
    [InlineData(59.999, 2, "1:00.00")]
    [InlineData(59.994, 2, "0:59.99")]
    [InlineData(0, 0, "0:00")]
    [InlineData(5.5, 1, "0:05.5")]
    [InlineData(65, 2, "1:05.00")]
    [InlineData(3661, 0, "61:01")]
    public void A_running_time_is_minutes_and_seconds(double seconds, int places, string text) =>
        Assert.Equal(text, RunningTime.Text(Ratio.FromDecimal((decimal)seconds), places));

    [Fact]
    public void A_running_time_is_not_negative() => Assert.Throws<ArgumentOutOfRangeException>(() => RunningTime.Text(-1, 0));

    static Footage Film(int feet, string gauge) => FilmLength.OfFeet(feet).In(Gauge.Named(gauge)!, Speed.Normal);
}
