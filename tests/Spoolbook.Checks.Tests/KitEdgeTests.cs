using Spoolbook.Checks.Tests.Pages;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Checks.Tests;

/// <summary>Bodies, lenses and filters: just inside what is made nothing is said, just outside it something is.</summary>
public class KitEdgeTests
{
    // The lengths that film comes in and bodies are built for (Eastman Kodak, Student Filmmaker's Handbook, H-19, and from memory).
    [Theory]
    [InlineData("16mm", "100ft", 0)]
    [InlineData("16mm", "30m", 0)]
    [InlineData("16mm", "30.5m", 0)] // as on the can
    [InlineData("16mm", "4010fr", 0)] // a quarter of a percent is rounding
    [InlineData("16mm", "4011fr", 1)]
    [InlineData("16mm", "600ft", 0)]
    [InlineData("16mm", "500ft", 1)]
    [InlineData("super16", "600ft", 0)]
    [InlineData("super16", "500ft", 1)]
    [InlineData("35mm", "500ft", 0)]
    [InlineData("35mm", "600ft", 1)]
    [InlineData("35mm-3perf", "1000ft", 0)]
    [InlineData("35mm-3perf", "600ft", 1)]
    [InlineData("35mm-2perf", "1000ft", 0)]
    [InlineData("35mm-2perf", "600ft", 1)]
    [InlineData("super8", "17ft", 0)] // too few to say what is usual
    public void A_body_takes_a_length_that_film_of_its_gauge_comes_in(string gauge, string takes, int flagged) =>
        AssertSays(
            "holds",
            flagged,
            $"# production.yaml\ngauge: {gauge}\n# kit.yaml\nbodies: [{{body: B1, speeds: [24], takes: {takes}}}]\n"
        );

    // B. Brown, Cinematography: Theory and Practice, 2nd ed. 2011, lists shutters of 72 to 270 degrees.
    [Theory]
    [InlineData("72", 0)]
    [InlineData("71.9", 1)]
    [InlineData("270", 0)]
    [InlineData("270.1", 1)]
    public void A_shutter_is_open_for_seventy_two_to_two_hundred_and_seventy_degrees(string angle, int flagged) =>
        AssertSays("degrees", flagged, $"# kit.yaml\nbodies: [{{body: B1, speeds: [24], shutter: {angle}, takes: 100ft}}]\n");

    // A dial rises, mostly by twice, and has even figures, fives and nine (common practice).
    [Theory]
    [InlineData("[9, 18, 24, 25]", "")]
    [InlineData("[11, 24]", "no dial has 11 frames")]
    [InlineData("[24, 27]", "no dial has 27 frames")]
    [InlineData("[24, 24]", "24 comes after a faster one")]
    [InlineData("[24, 12, 200]", "12 comes after a faster one")]
    [InlineData("[24, 24, 200]", "24 comes after a faster one")]
    [InlineData("[16, 64]", "")]
    [InlineData("[16, 66]", "no dial goes to 66 frames")]
    public void A_dial_has_the_speeds_that_are_engraved_on_dials(string speeds, string says) =>
        AssertSays(says, says.Length == 0 ? 0 : 1, $"# kit.yaml\nbodies: [{{body: B1, speeds: {speeds}, takes: 100ft}}]\n");

    // A variable dial has every speed between its ends.
    [Theory]
    [InlineData("speeds: [12, 24, 64], loading-speed: 24", 0)]
    [InlineData("speeds: [12, 24, 64], loading-speed: 16", 0)]
    [InlineData("speeds: [12, 24, 64], loading-speed: 8", 1)]
    [InlineData("speeds: [12, 24, 64], loading-speed: 80", 1)]
    [InlineData("speeds: [12, 24], slowest: 8, loading-speed: 8", 0)]
    [InlineData("speeds: [12, 24], slowest: 10, loading-speed: 8", 1)]
    [InlineData("speeds: [12, 24], fastest: 80, loading-speed: 80", 0)]
    [InlineData("speeds: [12, 24], fastest: 64, loading-speed: 80", 1)]
    public void A_body_is_loaded_at_a_speed_that_it_has(string keys, int flagged) =>
        AssertSays("a speed it does not have", flagged, $"# kit.yaml\nbodies: [{{body: B1, {keys}, takes: 100ft}}]\n");

    // Half open costs a stop (geometry); three quarters are engraved as half a stop (common practice).
    [Theory]
    [InlineData("{mark: half, open: 1/2, stops: 1}", 0)]
    [InlineData("{mark: part, open: 3/4, stops: 1/2}", 0)]
    [InlineData("{mark: half, open: 1/2, stops: 2}", 1)]
    [InlineData("{mark: half, open: 1/2}", 0)]
    [InlineData("{mark: closed, open: 0}", 0)]
    public void A_mark_costs_the_stops_of_its_opening(string mark, int flagged) =>
        AssertSays(
            "opening costs",
            flagged,
            $"# kit.yaml\nbodies: [{{body: B1, speeds: [24], shutter: 133, takes: 100ft, marks: [{mark}]}}]\n"
        );

    // No image is nearer than four focal lengths (lens equation); a prime focuses nearer than a hundred, but for a wide one
    // (common practice).
    [Theory]
    [InlineData(25, "2.5m", "")]
    [InlineData(25, "2.51m", "focuses nearer than")]
    [InlineData(25, "0.1m", "")]
    [InlineData(25, "0.09m", "focuses as near as")]
    [InlineData(10, "1.2m", "")]
    [InlineData(10, "1.3m", "")]
    [InlineData(10, "1.31m", "focuses nearer than")]
    public void A_lens_focuses_down_to_what_a_lens_of_its_length_does(int focal, string nearest, string says) =>
        AssertSays(
            says,
            says.Length == 0 ? 0 : 1,
            $"# kit.yaml\nlenses: [{{lens: {focal}mm, focal: {focal}, widest: 1.4, smallest: 22, nearest: {nearest}}}]\n"
        );

    // A density of 0.3 is a stop (ISO 5-1), and so is a factor of two; an 85 shifts by 112 mireds (Kodak, Wratten filters).
    [Theory]
    [InlineData("ND0.6", "stops: 2", 0)]
    [InlineData("ND6", "stops: 2", 0)]
    [InlineData("ND8", "stops: 3", 0)] // a factor
    [InlineData("ND8", "stops: 2 2/3", 0)] // a density of 0.8
    [InlineData("ND8", "stops: 1", 1)]
    [InlineData("ND2", "stops: 1.1", 0)]
    [InlineData("ND1.5", "stops: 5", 0)]
    [InlineData("ND1.5", "stops: 0.6", 1)] // no factor is less than two
    [InlineData("85", "stops: 2/3, mireds: 112", 0)]
    [InlineData("85", "stops: 2/3, mireds: 130", 1)]
    [InlineData("ND6", "stops: 2, mireds: 20", 1)] // neutral
    [InlineData("Blue", "stops: 2, mireds: 20", 0)]
    public void A_filter_takes_what_its_name_says(string name, string keys, int flagged) =>
        AssertSays("by its name", flagged, $"# kit.yaml\nfilters: [{{filter: \"{name}\", {keys}}}]\n");

    static void AssertSays(string says, int times, string example)
    {
        var found = Found(example).ToList();
        Assert.Equal(times, found.Count);
        Assert.All(found, finding => Assert.Contains(says, finding.Message, StringComparison.Ordinal));
    }

    static IEnumerable<Finding> Found(string example) =>
        WholeRun.Of(BaseProduction.With(example)).Findings.Where(f => f.Check == "kit/unlikely-figure");
}
