using Spoolbook.Checks.Running;
using Spoolbook.Checks.Tests.Pages;

namespace Spoolbook.Checks.Tests;

/// <summary>
/// The checks' limits against published ones, with the source beside each row. Two published figures are limits of no check: 50 %
/// relative humidity for general storage (H20), since nobody writes down a store's humidity, and how processed film is kept (H23),
/// since the record ends where the lab has the roll.
/// </summary>
public class PublishedLimitsTests
{
    // Half a stop written in thirds or in decimals is still half a stop.
    const double Hair = 0.06;

    [Theory]
    [InlineData("negative-over", 2.0)] // D44: colour negative, 1 stop under to 2 stops over: US Army photography course SS0514
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
    [InlineData("N250-A", "ecn-2", 2)] // D43: push and pull two stops at most: a motion-picture laboratory's published guide for students
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

    [Theory]
    [InlineData(183)] // H15b: six months at 13 °C or lower (Kodak, Student Filmmaker's Handbook; The Essential Reference Guide, ch. 11)
    [InlineData(365)] // H22: a year at 10 °C or less, of another maker's colour stock, and a gradual change at 20 to 25 °C (storage note)
    public void Stock_is_left_in_the_warm_for_less_time_than_its_maker_leaves_it_in_the_cold(int published) =>
        Assert.InRange(Assert.IsType<Tolerance<long>>(Tolerances.Named("days-in-warm")).Usual, 1, published / 6);

    // H26: background radiation changes EI 800 about three times as much as EI 200 (Kodak, FAQ 1631). Fast stock must not wait in the
    // warm longer than a third of what slow stock may in the cold.
    [Fact]
    public void Fast_stock_which_ages_three_times_as_fast_is_told_in_time_too() =>
        Assert.InRange(Assert.IsType<Tolerance<long>>(Tolerances.Named("days-in-warm")).Usual, 1, 183 / 3);

    // H25: fog can be measured in motion picture camera film after a single scan (Kodak, TIB5201, 2003). A still film has five.
    [Theory]
    [InlineData(1)]
    [InlineData(5)]
    public void A_single_scan_is_one_too_many(int passes)
    {
        Assert.Equal(0, Assert.IsType<Tolerance<long>>(Tolerances.Named("x-ray-passes")).Usual);
        AssertFound(
            "stock/x-rayed",
            $"# stock.yaml\nstock-log:\n  - x-rayed: {{lot: N500-A, units: [1], on: 2026-10-01, passes: {passes}}}\n"
        );
    }

    // I6, C4: a daylight roll has about five feet at each end for threading (Movie Making Made Easy, 1937).
    [Theory]
    [InlineData("5+00", "5+00", null)]
    [InlineData("0+20", "5+00", "length/head-not-allowed")]
    [InlineData("5+00", "0+20", "length/tail-not-allowed")]
    public void An_end_of_five_feet_passes_and_one_of_half_a_foot_does_not(string head, string tail, string? check) =>
        AssertFound(
            check,
            $"load: {{on: 2026-10-04 09:10, by: ana, light: subdued, head: {head}, loops: set, plate: closed, speed-after: 24}}\n"
                + "log:\n  - take: {scene: 1, shot: A, take: 1, to: 12+00, lens: 25mm, stop: 5.6, mark: good}\n"
                + "  - run-off: {to: 100+00, lens: capped}\n"
                + $"unload: {{on: 2026-10-04 18:10, by: ana, light: subdued, tail: {tail}}}\n"
        );

    // H15, H17: -18 °C or lower, down to -23, for long storage; warmed up to 21 °C the rise is in the table's longer time of an hour
    // and a half (Kodak, Student Filmmaker's Handbook). A room's 21 °C is 8 above a fridge's 13, in the shorter one.
    [Theory]
    [InlineData("freezer", "07:50", null)]
    [InlineData("freezer", "08:10", "stock/loaded-cold")]
    [InlineData("fridge", "08:15", null)]
    [InlineData("fridge", "08:40", "stock/loaded-cold")]
    public void Stock_out_of_a_published_cold_store_waits_the_published_time(string from, string at, string? check) =>
        AssertFound(
            check,
            $"# stock.yaml\nstock-log:\n  - out-of-cold: {{lot: N250-A, on: 2026-10-04 {at}, from: {from}}}\n"
                + "# rolls/r01.yaml\n"
                + "load: {on: 2026-10-04 09:10, by: ana, light: subdued, head: 4+00, loops: set, plate: closed, speed-after: 24}\n"
        );

    static void AssertFound(string? check, string example) =>
        Assert.Equal(check is null ? [] : [check], WholeRun.Of(BaseProduction.With(example)).Findings.Select(f => f.Check));
}
