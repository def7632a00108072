using CsCheck;

namespace Spoolbook.Film.Tests;

public class PassesTests
{
    static readonly Gen<double> _stops = Gen.Double[-8, 4];

    // Standard arithmetic, from memory (facts F16).
    [Theory]
    [InlineData(1, 0)]
    [InlineData(2, -1)]
    [InlineData(3, -1.585)]
    [InlineData(4, -2)]
    public void Each_of_n_equal_passes_is_under_by_log2_n(int passes, double stops) =>
        Assert.Equal(stops, Passes.StopsForEqualPasses(passes), 3);

    [Fact]
    public void There_is_no_frame_without_a_pass() => Assert.Throws<ArgumentOutOfRangeException>(() => Passes.StopsForEqualPasses(0));

    [Fact]
    public void Two_passes_at_one_stop_under_make_a_normal_frame() => Assert.Equal(0, Passes.Composite([-1, -1]), 12);

    [Fact]
    public void No_light_at_all_is_black()
    {
        Assert.Equal(Stops.Black, Passes.Composite([]));
        Assert.Equal(Stops.Black, Passes.Composite([Stops.Black, Stops.Black]));
        Assert.Equal(-1, Passes.Composite([Stops.Black, -1]), 12);
    }

    [Fact]
    public void N_equal_passes_make_a_normal_frame() =>
        Gen.Int[1, 40].Sample(n => Math.Abs(Passes.Composite(Enumerable.Repeat(Passes.StopsForEqualPasses(n), n))) < 1e-9);

    [Fact]
    public void The_order_of_passes_does_not_matter() =>
        Gen.Select(_stops, _stops, _stops)
            .Sample(
                (a, b, c) =>
                    Math.Abs(Passes.Composite([a, b, c]) - Passes.Composite([c, a, b])) < 1e-9
                    && Math.Abs(Passes.Composite([a, b, c]) - Passes.Composite([Passes.Composite([a, b]), c])) < 1e-9
            );

    [Theory]
    [InlineData(48, 0, 0)]
    [InlineData(48, 12, -0.415037)]
    [InlineData(48, -12, 0.321928)]
    [InlineData(48, 24, -1)]
    [InlineData(48, -48, 1)]
    [InlineData(48, -60, 1)]
    [InlineData(48, 48, double.NegativeInfinity)]
    [InlineData(48, 60, double.NegativeInfinity)]
    public void A_dissolve_out_of_line_dips_or_bumps(long frames, long late, double stops) =>
        Assert.Equal(stops, Passes.DissolveLevel(frames, late), 6);

    // The lengths that labs and camera manuals name (facts F1, F2, F4: Pritchard; Burder 1975 ch. 36; Cine-Kodak Special II p. 28).
    [Theory]
    [InlineData(8)]
    [InlineData(16)]
    [InlineData(24)]
    [InlineData(32)]
    [InlineData(40)]
    [InlineData(48)]
    [InlineData(60)]
    [InlineData(64)]
    [InlineData(96)]
    public void An_aligned_dissolve_is_level_at_every_frame(long frames)
    {
        for (var frame = 0L; frame < frames; frame++)
        {
            var both = Fade.OpeningIn(frame, frames) + Fade.OpeningOut(frame, frames);
            Assert.Equal(1, both, 12);
        }
    }

    [Fact]
    public void The_level_of_a_dissolve_is_the_sum_of_its_two_fades() =>
        Gen.Select(Gen.Long[1, 96], Gen.Long[-95, 95])
            .Where((n, k) => Math.Abs(k) < n)
            .Sample(
                (n, k) =>
                    Enumerable
                        .Range(0, (int)n)
                        .Where(i => i - k >= 0 && i - k < n)
                        .All(i =>
                            Math.Abs(
                                Passes.Composite([Math.Log2(Fade.OpeningOut(i, n)), Math.Log2(Fade.OpeningIn(i - k, n))])
                                    - Passes.DissolveLevel(n, k)
                            ) < 1e-9
                        )
            );

    [Theory]
    [InlineData(4, -1, 0)]
    [InlineData(4, 0, 0.125)]
    [InlineData(4, 3, 0.875)]
    [InlineData(4, 4, 1)]
    [InlineData(1, 0, 0.5)]
    [InlineData(0, 0, 1)]
    public void A_fade_opens_evenly_at_the_middle_of_each_frame(long frames, long frame, double opening)
    {
        Assert.Equal(opening, Fade.OpeningIn(frame, frames));
        Assert.Equal(1 - opening, Fade.OpeningOut(frame, frames));
    }

    [Fact]
    public void A_fade_is_not_shorter_than_nothing() => Assert.Throws<ArgumentOutOfRangeException>(() => Fade.OpeningIn(0, -1));

    [Fact]
    public void A_dissolve_has_frames() => Assert.Throws<ArgumentOutOfRangeException>(() => Passes.DissolveLevel(0, 0));
}
