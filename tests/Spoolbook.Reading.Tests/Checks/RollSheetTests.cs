using Spoolbook.Reading.Tests.Sheets;

namespace Spoolbook.Reading.Tests.Checks;

/// <summary>Mistakes in a roll's file: one piece of the small roll is wrong, and the marks show where the finding must point.</summary>
public sealed class RollSheetTests
{
    [Theory]
    // Keys.
    [InlineData("body: B1", "«bdoy»: B1", "sheet/unknown-key")]
    [InlineData("light: subdued", "«ligth»: subdued", "sheet/unknown-key")]
    [InlineData("light: subdued", "«lens»: 25mm", "sheet/unknown-key")]
    [InlineData("- rewind: {to", "- «rewnd»: {to", "sheet/unknown-key")]
    [InlineData("- wind: full", "- {wind: full, «note»: beside}", "sheet/unknown-key")]
    [InlineData("unit: 1", "unit: 1\n«unit»: 2", "sheet/duplicate-key")]
    [InlineData("stop: 5.6", "stop: 5.6, «stop»: 8", "sheet/duplicate-key")]
    [InlineData("load: {on: 2026-10-04 09:10,", "«load»: {", "sheet/missing-key")]
    [InlineData("load: {on: 2026-10-04 09:10,", "load: {«on»: ,", "sheet/missing-key")]
    [InlineData("roll: R01", "«roll»:", "sheet/missing-key")]
    [InlineData("spoolbook: 1\nroll", "«roll»", "sheet/missing-key")]
    [InlineData("- take: {scene: 1, shot: A, take: 1,", "- «take»: {shot: A, take: 1,", "sheet/missing-key")]
    [InlineData("- take: {scene: 1, shot: A, take: 1, to: 14+10", "- «take»: {scene: 1, shot: A, take: 1", "sheet/missing-key")]
    [InlineData("to: 14+10", "to: 14+10, «frames»: 96fr", "sheet/written-twice")]
    [InlineData("spoolbook: 1", "spoolbook: «2»", "sheet/unsupported-version")]
    // Kinds.
    [InlineData(
        "load: {on: 2026-10-04 09:10, by: ana, light: subdued, head: 4+00, loops: set, speed-after: 24}",
        "load: «by hand»",
        "sheet/wrong-kind"
    )]
    [InlineData("stop: 5.6", "stop: «[4, 5.6]»", "sheet/wrong-kind")]
    [InlineData("focus: 6ft", "focus: «{feet: 6}»", "sheet/wrong-kind")]
    [InlineData("- wind: full", "- «wind»", "sheet/wrong-kind")]
    [InlineData("- wind: full", "- «[wind]»", "sheet/wrong-kind")]
    [InlineData("unit: 1", "«[unit]»: 1", "sheet/wrong-kind")]
    [InlineData("- wind: full", "- wind: «half»", "sheet/bad-choice")]
    // Values.
    [InlineData("to: 14+10", "to: «14+1O»", "sheet/bad-length")]
    [InlineData("to: 14+10", "to: «14»", "sheet/bad-length")]
    [InlineData("to: 14+10", "to: «-3+00»", "sheet/bad-length")]
    [InlineData("to: 14+10", "to: «'14,5ft'»", "sheet/bad-length")]
    [InlineData("to: 14+10", "to: «99999999999999999999ft»", "sheet/bad-length")]
    [InlineData("frames: 96fr", "frames: «a few»", "sheet/bad-length")]
    [InlineData("head: 4+00", "head: «4 bananas»", "sheet/bad-length")]
    [InlineData("lab: {process: ecn-2, push", "totals: {good: «a lot»}\nlab: {process: ecn-2, push", "sheet/bad-length")]
    [InlineData("lab: {process: ecn-2, push", "totals: {good: «31+45»}\nlab: {process: ecn-2, push", "sheet/bad-length")]
    [InlineData("lab: {process: ecn-2, push", "totals: {takes: «some»}\nlab: {process: ecn-2, push", "sheet/bad-number")]
    [InlineData("speed-after: 24", "speed-after: «0»", "sheet/bad-speed")]
    [InlineData("speed-after: 24", "speed-after: «fast»", "sheet/bad-speed")]
    [InlineData("stop: 5.6", "stop: «wide open»", "sheet/bad-stop")]
    [InlineData("push: 1/2", "push: «a bit»", "sheet/bad-stop")]
    [InlineData("push: 1/2", "push: «1/0»", "sheet/bad-stop")]
    [InlineData("focus: 6ft", "focus: «near»", "sheet/bad-distance")]
    [InlineData("mark: good", "mark: «ok»", "sheet/bad-choice")]
    [InlineData("light: subdued", "light: «shady»", "sheet/bad-choice")]
    [InlineData("shutter: closed", "shutter: «shut»", "sheet/bad-choice")]
    [InlineData("mark: good", "mark: good, sync: «maybe»", "sheet/bad-choice")]
    [InlineData("at: 09:30", "at: «25:30»", "sheet/bad-time")]
    [InlineData("at: 09:30", "at: «half past nine»", "sheet/bad-time")]
    [InlineData("on: 2026-10-04 16:45", "on: «2026-02-30 16:45»", "sheet/bad-date")]
    [InlineData("on: 2026-10-04 16:45", "on: «4.10.2026 16:45»", "sheet/bad-date")]
    [InlineData("mark: good", "mark: good, on: «2026-13-01»", "sheet/bad-date")]
    [InlineData("mark: good", "mark: good, interval: «often»", "sheet/bad-duration")]
    [InlineData("mark: good", "mark: good, metered-at: «soon»", "sheet/bad-duration")]
    [InlineData("mark: good", "mark: good, metered-at: «0»", "sheet/bad-duration")]
    [InlineData("mark: good", "mark: good, metered-at: «1/0»", "sheet/bad-duration")]
    [InlineData("mark: good", "mark: good, light: «sunny»", "sheet/bad-choice")]
    [InlineData("mark: good", "mark: good, slot: «closed»", "sheet/bad-choice")]
    [InlineData("mark: good", "mark: good, finder: «shut»", "sheet/bad-choice")]
    [InlineData("mark: good", "mark: good, measured: [6ft, «far»]", "sheet/bad-distance")]
    [InlineData("mark: good", "mark: good, rated: «fast»", "sheet/bad-number")]
    [InlineData("push: 1/2", "push: 1/2, effects: [fade, «wipe»]", "sheet/bad-choice")]
    [InlineData("push: 1/2", "push: 1/2, sent: «tomorrow»", "sheet/bad-date")]
    [InlineData("take: 2", "take: «two»", "sheet/bad-number")]
    [InlineData("take: 2", "take: «0»", "sheet/bad-number")]
    [InlineData("unit: 1", "unit: «99999999999999999999»", "sheet/bad-number")]
    [InlineData("mark: good", "mark: good, single-frame: «lots»", "sheet/bad-choice")]
    [InlineData("mark: good", "mark: good, counter: «-4»", "sheet/bad-number")]
    // References.
    [InlineData("by: ana, light", "by: «anna», light", "sheet/unknown-reference")]
    [InlineData("by: ana, tail", "by: «bob», tail", "sheet/unknown-reference")]
    [InlineData("mark: good", "mark: good, by: «bob»", "sheet/unknown-reference")]
    [InlineData("unit: 1", "short-end-of: «R9»", "sheet/unknown-reference")]
    [InlineData("unit: 1", "short-end-of: «R01»", "sheet/unknown-reference")]
    // YAML itself.
    [InlineData("  - wind: full", "«\t»- wind: full", "sheet/not-yaml")]
    [InlineData("focus: 6ft", "note: director«:» again", "sheet/not-yaml")]
    [InlineData("unit: 1", "unit: 1«:» 2", "sheet/not-yaml")]
    [InlineData("body: B1", "body: «\"»B1", "sheet/not-yaml")]
    [InlineData("body: B1", "body: «@»B1", "sheet/not-yaml")]
    [InlineData("body: B1", "body: «*cam»", "sheet/not-yaml")]
    [InlineData("body: B1", "body: &b [«*b»]", "sheet/not-yaml")]
    [InlineData("lab: {process: ecn-2, push: 1/2}", "lab: «{»process: ecn-2, push: 1/2", "sheet/not-yaml")]
    [InlineData("unload: {", "«---»\nunload: {", "sheet/not-yaml")]
    public void A_slip_of_the_pen_is_found_in_its_place(string right, string wrong, string check)
    {
        var marked = MarkedText.Parse("rolls/r01.yaml", SmallProduction.Roll.Replace(right, wrong, StringComparison.Ordinal));
        var result = ProductionReader.Read(SmallProduction.With("rolls/r01.yaml", marked.Text));

        var finding = Assert.Single(result.Findings);
        Assert.Equal((check, Assert.Single(marked.Marks)), (finding.Check, finding.Place));
        Assert.NotEmpty(finding.Help);
    }

    [Theory]
    [InlineData("bdoy", "Did you mean `body`?")]
    [InlineData("short_end_of", "Did you mean `short-end-of`?")]
    [InlineData("Rated", "Did you mean `rated`?")]
    [InlineData("title", "`title:` is a key of the file production.yaml.")]
    [InlineData(
        "weather",
        "The keys of a roll's file: spoolbook, roll, lot, unit, short-end-of, length, body, rated, practice, load, log, unload, "
            + "totals, lab, accept."
    )]
    public void An_unknown_key_is_answered_with_the_nearest_one(string key, string help)
    {
        var result = ProductionReader.Read(SmallProduction.With("rolls/r01.yaml", SmallProduction.Roll + key + ": x\n"));

        Assert.Equal(help, Assert.Single(result.Findings).Help);
    }

    [Fact]
    public void A_comma_in_a_remark_between_brackets_is_flagged_as_such()
    {
        var roll = SmallProduction.Roll.Replace("mark: good", "mark: good, note: Ana on the key, Bo counting", StringComparison.Ordinal);
        var result = ProductionReader.Read(SmallProduction.With("rolls/r01.yaml", roll));

        Assert.Contains("quotes round the whole", Assert.Single(result.Findings).Help, StringComparison.Ordinal);
    }

    [Fact]
    public void Ten_mistakes_are_ten_findings()
    {
        var roll = SmallProduction
            .Roll.Replace("body", "bdoy", StringComparison.Ordinal)
            .Replace("unit: 1", "unit: one", StringComparison.Ordinal)
            .Replace("09:10", "25:10", StringComparison.Ordinal)
            .Replace("subdued", "shady", StringComparison.Ordinal)
            .Replace("4+00", "4", StringComparison.Ordinal)
            .Replace("14+10", "14+1O", StringComparison.Ordinal)
            .Replace("good", "ok", StringComparison.Ordinal)
            .Replace("6ft", "near", StringComparison.Ordinal)
            .Replace("2+00", "some", StringComparison.Ordinal)
            .Replace("1/2", "half", StringComparison.Ordinal);

        Assert.Equal(10, ProductionReader.Read(SmallProduction.With("rolls/r01.yaml", roll)).Findings.Length);
    }

    [Fact]
    public void Findings_of_a_roll_name_it()
    {
        var roll = SmallProduction.Roll.Replace("mark: good", "mark: ok", StringComparison.Ordinal);

        Assert.Equal("R01", Assert.Single(ProductionReader.Read(SmallProduction.With("rolls/r01.yaml", roll)).Findings).Roll);
    }
}
