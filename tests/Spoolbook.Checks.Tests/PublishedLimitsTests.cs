using Spoolbook.Checks.Running;
using Spoolbook.Checks.Tests.Pages;

namespace Spoolbook.Checks.Tests;

/// <summary>The checks' limits against published ones, with the source beside each row.</summary>
public class PublishedLimitsTests
{
    // Half a stop written in thirds or in decimals is still half a stop.
    const double Hair = 0.06;

    [Theory]
    [InlineData("negative-over", 2.0)] // colour negative, 1 stop under to 2 stops over: US Army photography course SS0514
    [InlineData("negative-under", 1.0)] // the same
    [InlineData("reversal-latitude", 0.5)] // reversal, half a stop either way: the same
    public void The_house_lets_pass_no_more_than_the_stock_is_published_to_forgive(string tolerance, double published) =>
        Assert.InRange(Assert.IsType<Tolerance<double>>(Tolerances.Named(tolerance)).Usual, 0.5, published + Hair);

    [Theory]
    [InlineData("N250-A", "ecn-2", "8", "5.6 2/3", null)] // negative, a third over
    [InlineData("N250-A", "ecn-2", "8", "4", "exposure/over")] // two stops over: as far as SS0514 goes, and told
    [InlineData("N250-A", "ecn-2", "8", "8 2/3", null)] // two thirds under
    [InlineData("N250-A", "ecn-2", "8", "11", "exposure/under")] // one stop under: as far as SS0514 goes, and told
    [InlineData("X200-A", "bw-reversal", "8", "5.6/8", null)] // reversal, half a stop over
    [InlineData("X200-A", "bw-reversal", "8", "8/11", null)] // half a stop under
    [InlineData("X200-A", "bw-reversal", "8", "5.6 1/3", "exposure/over")] // two thirds over: beyond SS0514
    [InlineData("X200-A", "bw-reversal", "8", "8 2/3", "exposure/under")] // two thirds under
    public void A_stop_off_the_reading_is_flagged_where_the_published_latitude_ends(
        string lot,
        string process,
        string reading,
        string stop,
        string? check
    ) =>
        AssertFound(
            check,
            $"lot: {lot}\nlab: {{process: {process}}}\nlog:\n  - take: {{scene: 1, shot: A, take: 1, to: 12+00, lens: 25mm, stop: "
                + $"{stop}, reading: {reading}, mark: good}}\n"
        );

    [Theory]
    [InlineData("N250-A", "ecn-2", 2)] // push and pull two stops at most: a motion-picture laboratory's published guide for students
    [InlineData("X200-A", "bw-reversal", 1)] // black-and-white reversal one stop at most: the same
    public void A_push_is_flagged_one_stop_beyond_what_a_laboratory_publishes(string lot, string process, int most)
    {
        var lab =
            $"# production.yaml\nlab: {{name: Brackwater, processes: [ecn-2, bw-reversal], push-most: {most}, return-to: [The Short "
                + $"Pier]}}\n";

        AssertFound(null, $"lot: {lot}\nlab: {{process: {process}, push: {most}}}\n{lab}");
        AssertFound(null, $"lot: {lot}\nlab: {{process: {process}, push: -{most}}}\n{lab}");
        AssertFound("lab/push-too-far", $"lot: {lot}\nlab: {{process: {process}, push: {most + 1}}}\n{lab}");
        AssertFound("lab/push-too-far", $"lot: {lot}\nlab: {{process: {process}, push: -{most + 1}}}\n{lab}");
    }

    static void AssertFound(string? check, string example) =>
        Assert.Equal(check is null ? [] : [check], WholeRun.Of(BaseProduction.With(example)).Findings.Select(f => f.Check));
}
