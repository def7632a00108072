using CsCheck;

namespace Spoolbook.Film.Tests;

public class FootageTests
{
    static readonly Gen<Gauge> _gauges = Gen.Int[0, Gauge.All.Count - 1].Select(i => Gauge.All[i]);

    // A26 H: M. Lustig, Music Editing for Motion Pictures (1980): 83.95 ft × 2.5 is 209.875 ft, 209 ft + 14 fr.
    [Fact]
    public void A_16mm_length_is_the_same_frames_in_35mm()
    {
        var film = FilmLength.Parse("83+38").Value.In(Gauge.Film16, Speed.Normal);

        Assert.Equal("209+14", film.FeetAndFrames(Gauge.Film35));
        Assert.Equal(Ratio.FromDecimal(83.95m), film.Feet(Gauge.Film16));
        Assert.Equal(Ratio.FromDecimal(209.875m), film.Feet(Gauge.Film35));
    }

    // A25 H: Lustig (1980): ×2.5 and ×0.4, 36 ft are 90 ft.
    [Fact]
    public void Sixteen_millimetre_feet_times_two_and_a_half_are_35mm_feet()
    {
        var film = FilmLength.OfFeet(36).In(Gauge.Film16, Speed.Normal);

        Assert.Equal(90, film.Feet(Gauge.Film35));
        Assert.Equal(new Ratio(5, 2), Gauge.Film16.FramesPerFoot / Gauge.Film35.FramesPerFoot);
    }

    // A27 H: Lustig (1980).
    [Fact]
    public void Lengths_in_feet_and_frames_add_up() =>
        Assert.Equal("1809+05", (Film35("39+14") + Film35("1769+07")).FeetAndFrames(Gauge.Film35));

    // A29 H: Lustig (1980); the count takes in the first frame and the last.
    [Fact]
    public void A_length_between_two_frames_counts_both() =>
        Assert.Equal("1815+14", (Film35("1827+13") - Film35("12+00") + new Footage(1)).FeetAndFrames(Gauge.Film35));

    // A28 H: Lustig (1980).
    [Theory]
    [InlineData("16mm", 0.025)]
    [InlineData("35mm", 0.0625)]
    public void One_frame_is_a_part_of_a_foot(string gauge, double feet) =>
        Assert.Equal(feet, new Footage(1).Feet(Gauge.Named(gauge)!).ToDouble());

    [Theory]
    [InlineData("100ft", 30.48)] // C3 H: Eastman Kodak H-19 prints 30.5 m
    [InlineData("200ft", 60.96)] // C3 H: and 61 m
    [InlineData("400ft", 121.92)] // B14 M: study material prints 122 m; C1 H the same
    public void Feet_are_metres_by_0_3048(string length, double metres) =>
        Assert.Equal(metres, FilmLength.Parse(length).Value.In(Gauge.Film16, Speed.Normal).Metres(Gauge.Film16).ToDouble(), 10);

    [Theory]
    [InlineData(1252, "16mm", "31+12")]
    [InlineData(1245, "16mm", "31+05")]
    [InlineData(-1252, "16mm", "-31+12")]
    [InlineData(0, "16mm", "0+00")]
    [InlineData(22, "35mm 3-perf", "1+00")]
    [InlineData(43, "35mm 3-perf", "2+00")]
    [InlineData(64, "65mm", "5+00")]
    public void A_length_is_written_in_feet_and_two_digits_of_frames(long frames, string gauge, string text) =>
        Assert.Equal(text, new Footage(frames).FeetAndFrames(Gauge.Named(gauge)!));

    [Fact]
    public void Of_two_lengths_one_is_shorter_whichever_comes_first()
    {
        var (shorter, longer) = (new Footage(1), new Footage(2));

        Assert.Equal(shorter, Footage.Min(shorter, longer));
        Assert.Equal(shorter, Footage.Min(longer, shorter));
        Assert.Equal(longer, Footage.Max(shorter, longer));
        Assert.Equal(longer, Footage.Max(longer, shorter));
    }

    [Fact]
    public void Lengths_are_ordered_as_their_frames_are() =>
        Gen.Select(Gen.Long[-9, 9], Gen.Long[-9, 9])
            .Sample(
                (a, b) =>
                {
                    var (x, y) = (new Footage(a), new Footage(b));
                    return (x < y) == (a < b)
                        && (x > y) == (a > b)
                        && (x <= y) == (a <= b)
                        && (x >= y) == (a >= b)
                        && x.CompareTo(y) == a.CompareTo(b);
                }
            );

    [Fact]
    public void Feet_metres_and_time_go_there_and_back_exactly() =>
        Gen.Select(Gen.Long[0, 10_000_000], _gauges, Gen.Int[1, 200])
            .Sample(
                (frames, gauge, fps) =>
                {
                    var film = new Footage(frames);
                    var speed = new Speed(new Ratio(fps, 3));
                    return FilmLength.OfFeet(film.Feet(gauge)).In(gauge, speed) == film
                        && FilmLength.OfMetres(film.Metres(gauge)).In(gauge, speed) == film
                        && FilmLength.OfSeconds(film.Seconds(speed)).In(gauge, speed) == film
                        && Footage.RunningFor(film.Seconds(speed), speed) == film
                        && film.Feet(gauge) * Length.MetresPerFoot == film.Metres(gauge);
                }
            );

    [Theory]
    [InlineData("953/100", 1, "9.5", "3/100", false)]
    [InlineData("19/2", 1, "9.5", "0", true)]
    [InlineData("-953/100", 1, "-9.5", "-3/100", false)]
    [InlineData("2/3", 0, "1", "-1/3", false)]
    public void Rounding_shows_what_it_left_over(string exact, int places, string text, string remainder, bool whole)
    {
        var parts = exact.Split('/');
        var rounded = new Rounded(new Ratio(long.Parse(parts[0], null), long.Parse(parts[1], null)), places);

        Assert.Equal(text, rounded.Text);
        Assert.Equal(remainder, rounded.Remainder.ToString());
        Assert.Equal(whole, rounded.IsExact);
        Assert.Equal(whole ? text : "≈" + text, rounded.ToString());
    }

    [Fact]
    public void For_debugging_a_length_is_its_frames() => Assert.Equal("1252fr", new Footage(1252).ToString());

    static Footage Film35(string length) => FilmLength.Parse(length).Value.In(Gauge.Film35, Speed.Normal);
}
