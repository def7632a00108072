using System.Globalization;
using Spoolbook.Checks.Tests.Pages;
using Spoolbook.Film;
using Spoolbook.Reading.Files;

namespace Spoolbook.Checks.Tests;

/// <summary>Where a distance begins to be wrong: just inside it nothing is said, just outside it something is.</summary>
public class FocusEdgeTests
{
    // A 25 mm at f/5.6 focused at 2 m from the film plane: s H / (H + s - F) and s H / (H - s + F), H being F² / (N c) and s the
    // distance from the lens (textbook optics; the circle of confusion is the gauge's).
    const double Focal = 25,
        Number = 5.6,
        Focus = 2000;

    static readonly double _hyperfocal = Focal * Focal / (Number * Gauge.Film16.CircleOfConfusion);
    static readonly double _image = Focus / 2 * (1 - Math.Sqrt(1 - (4 * Focal / Focus)));
    static readonly double _near = _image + ((Focus - _image) * _hyperfocal / (_hyperfocal + (Focus - _image) - Focal));
    static readonly double _far = _image + ((Focus - _image) * _hyperfocal / (_hyperfocal - (Focus - _image) + Focal));

    // A tape is read to two parts in a hundred (common practice).
    [Theory]
    [InlineData(0.985, false)]
    [InlineData(0.975, true)]
    public void A_subject_is_soft_where_it_is_nearer_than_what_is_sharp_by_more_than_a_tape_is_read_to(double part, bool soft) =>
        Assert.Equal(soft, IsSoft($"focus: 2m, measured: {Millimetres(_near * part)}, mark: good"));

    [Theory]
    [InlineData(1.015, false)]
    [InlineData(1.025, true)]
    public void A_subject_is_soft_where_it_is_farther_than_what_is_sharp_by_more_than_a_tape_is_read_to(double part, bool soft) =>
        Assert.Equal(soft, IsSoft($"focus: 2m, measured: {Millimetres(_far * part)}, mark: good"));

    [Theory]
    [InlineData("focus: 2m, measured: 9m, mark: test")] // a test of the lens is soft on purpose
    [InlineData("focus: 2m, mark: good")] // no tape was laid
    [InlineData("focus: 99mm, measured: 400mm, mark: good")] // nearer than four focal lengths a thin lens says nothing
    public void What_cannot_be_soft_is_not_flagged(string take) => Assert.False(IsSoft(take));

    [Fact]
    public void At_four_focal_lengths_depth_is_looked_at() => Assert.True(IsSoft("focus: 100mm, measured: 400mm, mark: good"));

    // The 25 mm focuses down to 500 mm; two parts in a hundred are what a tape is read to (common practice).
    [Theory]
    [InlineData("490mm", false)]
    [InlineData("489mm", true)]
    [InlineData("inf", false)]
    public void A_focus_is_nearer_than_the_lens_goes_by_more_than_two_parts_in_a_hundred(string focus, bool flagged) =>
        Assert.Equal(flagged, Flags("focus/nearer-than-lens", $"focus: {focus}, mark: good"));

    [Fact]
    public void A_lens_that_focuses_down_to_its_front_is_never_too_near() =>
        Assert.False(Flags("focus/nearer-than-lens", "focus: 10mm, mark: good", nearest: "0mm"));

    // 650 focal lengths are beyond the last figure of any ring (from memory): 16.25 m on a 25 mm.
    [Theory]
    [InlineData("16250mm", false)]
    [InlineData("16251mm", true)]
    [InlineData("inf", false)]
    public void A_focus_is_beyond_the_scale_where_the_ring_has_infinity_only(string focus, bool flagged) =>
        Assert.Equal(flagged, Flags("focus/beyond-scale", $"focus: {focus}, mark: good"));

    // Lenses of 50 mm and less were computed anew for prism finders (from memory).
    [Theory]
    [InlineData("50", true)]
    [InlineData("51", false)]
    public void A_lens_made_for_air_is_flagged_behind_a_prism_up_to_fifty_millimetres(string focal, bool flagged) =>
        Assert.Equal(flagged, Flags("focus/lens-not-for-finder", "focus: 2m, mark: good", focal: focal));

    [Theory]
    [InlineData("2m", "20m", true)] // three times as far is another shot (common practice)
    [InlineData("20m", "2m", true)]
    [InlineData("2m", "5m", false)]
    public void A_focus_jumps_where_what_was_sharp_is_far_from_what_is(string before, string after, bool flagged) =>
        Assert.Equal(
            flagged,
            Found($"focus: {before}, mark: ng", "0.5m", "75", $"focus: {after}, mark: good")
                .Contains("focus/jumped", StringComparer.Ordinal)
        );

    static bool IsSoft(string take) => Flags("focus/outside-depth", take);

    static bool Flags(string check, string take, string nearest = "0.5m", string focal = "25") =>
        Found(take, nearest, focal).Contains(check, StringComparer.Ordinal);

    static IEnumerable<string> Found(string take, string nearest, string focal, string? second = null) =>
        WholeRun
            .Of(
                TextFiles.OneFile(
                    $$"""
                    spoolbook: 1
                    title: The Ferry Light
                    code: FERRY
                    bodies: [{body: B1, speeds: [24], shutter: 180, finder-loss: 20%, takes: 100ft}]
                    lenses: [{lens: L, focal: {{focal}}, widest: 1.4, smallest: 22, nearest: {{nearest}}, made-for: air}]
                    lots: [{lot: D, stock: 50 D, ei: 50, balance: daylight, process: ecn-2, length: 100ft, units: 1}]
                    rolls:
                      - roll: R1
                        lot: D
                        unit: 1
                        body: B1
                        load: {on: 2026-10-02 09:00, light: dark, head: 4+00}
                        log:
                          - take: {scene: 1, shot: A, take: 1, to: 20+00, speed: 24, lens: L, stop: 5.6, {{take}}}
                    {{(second is null ? "" : $"      - take: {{scene: 1, shot: A, take: 2, to: 30+00, lens: L, stop: 5.6, {second}}}")}}
                    """
                )
            )
            .Findings.Select(f => f.Check);

    static string Millimetres(double length) => string.Create(CultureInfo.InvariantCulture, $"{length:0.0}mm");
}
