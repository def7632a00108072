using System.Collections.Immutable;
using Spoolbook.Checks.Tests.Pages;
using Spoolbook.Checks.Unjudged;
using Spoolbook.Reading;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Tests;

/// <summary>What the record does not say is named at the end of a check, and is no finding.</summary>
public class NotLookedAtTests
{
    const string Full = "lens: 25mm, stop: 5.6, reading: 5.6, meter: M1, focus: 9ft, measured: 9ft, light: daylight, mark: good, at: 10:00";

    [Theory]
    [InlineData("exposure", "reading: 5.6, meter: M1, ", "exposure of 1 take: no meter reading")]
    [InlineData("stop", "stop: 5.6, ", "exposure of 1 take: no stop")]
    [InlineData("lens", "lens: 25mm, ", "lens of 1 take: not noted")]
    [InlineData("focus", "focus: 9ft, measured: 9ft, ", "focus of 1 take: not noted")]
    [InlineData("distance", "measured: 9ft, ", "focus of 1 take: no distance by tape")]
    [InlineData("colour", "light: daylight, ", "colour of 1 take: light not noted")]
    public void What_a_take_does_not_say_is_named_with_its_place(string question, string without, string said)
    {
        Assert.DoesNotContain(Of(Full), n => n.Question == question);

        var open = Assert.Single(Of(Full.Replace(without, "", StringComparison.Ordinal)), n => n.Question == question);

        Assert.Equal(said, open.Message);
        Assert.Equal(("rolls/r01.yaml", 10), (Assert.Single(open.Places).File, open.Places[0].Line));
    }

    [Theory]
    [InlineData("# rolls/r02.yaml\nroll: R02\nunit: 2\n# rolls/r01.yaml\ntotals: {good: 16, waste: 84, takes: 2}\n", "1 roll")]
    [InlineData(
        "totals: {good: 16, waste: 84, loaded: 100, takes: 2}\n# rolls/r02.yaml\n"
            + "roll: R02\nunit: 2\ntotals: {good: 16, loaded: 100, takes: 2}\n",
        "1 roll"
    )]
    [InlineData(
        "totals: {good: 16, no-good: 0, waste: 84, takes: 2}\n# rolls/r02.yaml\n"
            + "roll: R02\nunit: 2\ntotals: {good: 16, waste: 84, takes: 2}\n",
        null
    )]
    [InlineData("# rolls/r02.yaml\nroll: R02\nunit: 2\n", null)]
    public void Totals_are_asked_for_where_another_sheet_of_the_production_has_them(string rolls, string? things)
    {
        var open = Questions.Of(ProductionReader.Read(BaseProduction.With(rolls)).Production!, []).Where(n => n.Question == "totals");

        Assert.Equal(things is null ? [] : [$"totals of {things}: boxes of the sheet not taken down"], open.Select(n => n.Message));
    }

    [Fact]
    public void A_roll_with_an_error_is_named_because_the_checks_look_no_further()
    {
        var read = ProductionReader.Read(BaseProduction.With("log: []\n"));
        Finding wrong = new("group/what", Level.Error, Sentence.Plain("Wrong"), read.Production!.Place) { Roll = "R01" };

        var open = Questions.Of(read.Production, [wrong])[0];

        Assert.Equal(("after-errors", "the rest of R01: fix the errors above, and check again"), (open.Question, open.Message));
        Assert.DoesNotContain(Questions.Of(read.Production, [wrong with { Level = Level.Warning }]), n => n.Question == "after-errors");
    }

    [Fact]
    public void A_test_and_a_practice_roll_are_asked_for_nothing()
    {
        Assert.DoesNotContain(Of("mark: test"), n => n.Key is "reading" or "stop" or "lens" or "focus" or "light");
        Assert.DoesNotContain(Of("mark: good", "practice: yes\n"), n => n.Key is "reading" or "stop" or "wind" or "tail");
    }

    [Fact]
    public void Black_and_white_film_is_not_asked_for_the_colour_of_the_light() =>
        Assert.DoesNotContain(Of("mark: good", "lot: X200-A\n"), n => n.Question == "colour");

    [Fact]
    public void Film_under_tungsten_lamps_is_asked_whether_they_flicker_and_daylight_is_not()
    {
        Assert.Contains(Of("mark: good, light: tungsten"), n => n.Question == "flicker");
        Assert.DoesNotContain(Of("mark: good, light: tungsten, lamps: 50hz"), n => n.Question == "flicker");
        Assert.DoesNotContain(Of("mark: good, light: daylight"), n => n.Question == "flicker");
    }

    [Fact]
    public void Every_question_has_a_name_of_its_own_and_its_key_is_one_of_the_format()
    {
        Assert.Equal(Questions.Names.Count(), Questions.Names.Select(n => n.Name).Distinct(StringComparer.Ordinal).Count());
        var keys = File.ReadAllText(Path.Combine(Repository.Root, "src/Spoolbook.Reading/KEYS.md"));
        Assert.All(Questions.Names, n =>
            Assert.True(n.Key == "wind" || keys.Contains($"| `{n.Key}` |", StringComparison.Ordinal), $"{n.Name}: no key {n.Key}")
        );
    }

    [Fact]
    public void The_page_says_how_to_give_each_of_them() =>
        Assert.All(Questions.Names, n => Assert.Contains($"`{n.Key}`", Questions.Page, StringComparison.Ordinal));

    static ImmutableArray<NotLookedAt> Of(string take, string roll = "")
    {
        var log = $$"""
            {{roll}}log:
              - take: {scene: 1, shot: A, take: 1, to: 12+00, {{take}}}
              - run-off: {to: 100+00, lens: capped, at: 11:00}
            """;
        return Questions.Of(ProductionReader.Read(BaseProduction.With(log)).Production!, []);
    }
}
