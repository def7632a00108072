using Spoolbook.Checks.Tests.Pages;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Tests;

/// <summary>
/// One slip, one finding: what cannot be judged because of it is not flagged, and everything else is. Each example has a slip and
/// mistakes that would be found without it.
/// </summary>
public class OneSlipTests
{
    const string Unlisted = "  - take: {scene: 1, shot: A, take: 1, to: 12+00, lens: 99mm, stop: 5.6, mark: good}\n";
    const string TooFar = "lab: {process: ecn-2, push: 5}\n";
    const string Roll = "# rolls/r01.yaml\nlog:\n" + Unlisted + TooFar;

    [Fact]
    public void Without_a_slip_both_mistakes_are_found() => AssertFound(Roll, "kit/lens-not-in-kit", "lab/push-too-far");

    [Fact]
    public void While_the_kit_cannot_be_read_no_lens_is_missing_from_it() =>
        AssertFound("# kit.yaml\nbodies: [{body: B1\n" + Roll, "sheet/not-yaml", "lab/push-too-far");

    [Fact]
    public void A_wrong_value_in_the_kit_keeps_its_groups_quiet_and_no_others() =>
        AssertFound("# kit.yaml\nfilters: [{filter: ND6, stops: many}]\n" + Roll, "sheet/bad-stop", "lab/push-too-far");

    [Fact]
    public void A_wrong_value_in_the_stock_keeps_the_order_quiet_and_not_the_kit() =>
        AssertFound(
            "# stock.yaml\nlots:\n  - {lot: N250-A, stock: 250 D, ei: 250, balance: daylight, process: ecn-2, length: 100ft, units: 4}\n"
                + "  - {lot: N9, stock: 250 D, ei: 250, balance: daylight, process: ecn-2, length: long, units: 4}\n"
                + Roll,
            "sheet/bad-length",
            "kit/lens-not-in-kit"
        );

    [Fact]
    public void A_wrong_value_in_the_production_keeps_the_lab_and_the_shots_quiet_and_not_the_kit() =>
        AssertFound("# production.yaml\npaper: a3\n" + Roll, "sheet/bad-choice", "kit/lens-not-in-kit");

    // Kit and stock in the same file may lack the lens for the same reason.
    [Fact]
    public void A_wrong_value_in_a_file_that_holds_kit_and_stock_keeps_them_quiet_too() =>
        AssertFound(
            "# no kit.yaml\n# no stock.yaml\n# production.yaml\npaper: a3\n"
                + "bodies: [{body: B1, speeds: [24], shutter: 133, takes: 100ft}]\nlenses: [{lens: 25mm, focal: 25}]\n"
                + "lots: [{lot: N250-A, stock: 250 D, ei: 250, balance: daylight, process: ecn-2, length: 100ft, units: 4}]\n"
                + Roll,
            "sheet/bad-choice"
        );

    [Fact]
    public void While_the_stock_cannot_be_read_no_lot_is_unknown_and_its_rolls_wait() =>
        AssertFound("# stock.yaml\nlots: [{lot: N9\n" + Roll, "sheet/not-yaml");

    [Fact]
    public void A_wrong_value_on_a_roll_keeps_that_roll_quiet_and_not_the_next() =>
        AssertFound(
            "# rolls/r01.yaml\nload: {on: when, by: ana, light: subdued, head: 4+00, loops: set, plate: closed, speed-after: 24}\nlog:\n"
                + Unlisted
                + "# rolls/r02.yaml\nroll: R02\nunit: 2\n"
                + "load: {on: 2026-10-05 09:10, by: ana, light: subdued, head: 4+00, loops: set, plate: closed, speed-after: 24}\nlog:\n"
                + Unlisted.Replace("take: 1", "take: 2", StringComparison.Ordinal),
            "kit/lens-not-in-kit R02",
            "sheet/bad-date R01"
        );

    // The text is read without the character.
    [Fact]
    public void A_character_that_no_paper_prints_puts_nothing_in_doubt() =>
        AssertFound(
            "# production.yaml\ntitle: \"Salt\\u0007 Pier\"\n" + Roll,
            "sheet/bad-character",
            "kit/lens-not-in-kit",
            "lab/push-too-far"
        );

    [Theory]
    [InlineData("accept: [{check: kit/lens-not-in-kit, reason: Hired for the day, by: ana}]\n", "")]
    [InlineData("accept: [{check: kit/lens-not-in-kit, by: ana}]\n", "accept/no-reason kit/lens-not-in-kit")]
    [InlineData("accept: [{check: kit/lens-not-in-kit, take: 1A/1, reason: Hired, by: ana}]\n", "")]
    [InlineData("accept: [{check: kit/lens-not-in-kit, shot: 1A, reason: Hired, by: ana}]\n", "")]
    [InlineData("accept: [{check: kit/lens-not-in-kit, lot: N250-A, reason: Hired, by: ana}]\n", "")]
    [InlineData("accept: [{check: kit/lens-not-in-kit, shot: 1B, reason: Hired, by: ana}]\n", "kit/lens-not-in-kit")]
    [InlineData("accept: [{check: kit/lens-not-in-kit, lot: N500-A, reason: Hired, by: ana}]\n", "kit/lens-not-in-kit")]
    [InlineData("accept: [{check: kit/lens-not-in-kitt, reason: Hired, by: ana}]\n", "accept/unknown-check kit/lens-not-in-kit")]
    public void What_is_accepted_is_what_is_named(string accept, string expected) =>
        Assert.Equal(
            expected.Split(' ', StringSplitOptions.RemoveEmptyEntries),
            Checks("# rolls/r01.yaml\nlog:\n" + Unlisted + "  - run-off: {to: 100+00, lens: capped}\n# production.yaml\n" + accept).Order()
        );

    [Theory]
    [InlineData("sheet/bad-stop", "such a finding means that the file is written wrongly")]
    [InlineData("paper/logo", "with such a finding the papers cannot be printed")]
    [InlineData("spoolbook/fault", "such a finding is a mistake in Spoolbook")]
    [InlineData("shipment/same-code", "with such a finding no consignment goes")]
    public void What_cannot_be_accepted_says_why(string check, string why) =>
        Assert.Contains(
            why,
            Assert.Single(Found($"accept: [{{check: {check}, reason: In a hurry, by: ana}}]\n")).Message,
            StringComparison.Ordinal
        );

    [Theory]
    [InlineData("kit/lens-not-in-kitt", "kit/lens-not-in-kit")]
    [InlineData("entirely/otherwise", "`spoolbook explain` lists the checks")]
    public void A_waiver_for_no_check_is_answered_with_the_nearest_name_or_where_to_find_them(string check, string advice) =>
        Assert.Contains(
            advice,
            Assert.Single(Found($"accept: [{{check: {check}, reason: Hired, by: ana}}]\n")).Help,
            StringComparison.Ordinal
        );

    [Theory]
    [InlineData("", "matches no finding")]
    [InlineData("roll: R01, ", "matches no finding about roll R01")]
    [InlineData("take: 1A/1, lot: N250-A, ", "matches no finding about take 1A/1, lot N250-A")]
    [InlineData("shot: 1A, ", "matches no finding about shot 1A")]
    public void A_waiver_that_is_of_no_use_says_what_it_was_for(string place, string says) =>
        Assert.EndsWith(
            says,
            Assert.Single(Found($"accept: [{{check: lab/push-too-far, {place}reason: Agreed, by: ana}}]\n")).Message,
            StringComparison.Ordinal
        );

    // What printing finds is known once the papers are printed, and the waiver may be for that.
    [Fact]
    public void A_waiver_for_what_only_printing_finds_is_of_use_until_the_papers_are_printed() =>
        Assert.Empty(Found("accept: [{check: paper/does-not-fit, reason: A long name, by: ana}]\n"));

    static IEnumerable<Finding> Found(string accept) =>
        WholeRun
            .Of(BaseProduction.With("# production.yaml\n" + accept))
            .Findings.Where(f => f.Check.StartsWith("accept/", StringComparison.Ordinal));

    static void AssertFound(string example, params string[] expected) =>
        Assert.Equal(
            expected.Order(StringComparer.Ordinal),
            WholeRun
                .Of(BaseProduction.With(example))
                .Findings.Where(f => f.Level != Level.Note)
                .Select(f => expected.Any(e => e.Contains(' ', StringComparison.Ordinal)) ? $"{f.Check} {f.Roll}" : f.Check)
                .Order(StringComparer.Ordinal)
        );

    static IEnumerable<string> Checks(string example) => WholeRun.Of(BaseProduction.With(example)).Findings.Select(f => f.Check);
}
