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

    [Theory]
    [InlineData("# rolls/r02.yaml\nroll: R02\nunit: 2\n", "ready: all", "R02")]
    [InlineData("# rolls/r02.yaml\nroll: R02\nunit: 2\n", "loops: set", null)]
    [InlineData("", "ready: all", null)]
    public void A_roll_whose_ready_list_was_left_out_is_named_where_another_roll_has_it(string rolls, string load, string? roll)
    {
        var first = $"load: {{on: 2026-10-04 09:10, by: ana, light: subdued, head: 4+00, plate: closed, speed-after: 24, {load}}}\n";

        var open = Asked(rolls + "# rolls/r01.yaml\n" + first, "ready");

        Assert.Equal(roll is null ? [] : ["ready list of 1 roll: not noted at rolls/r02.yaml"], open);
    }

    [Theory]
    [InlineData("interval: 5s, mark: good", "1 take")]
    [InlineData("interval: 5s, finder: closed, mark: good", null)]
    [InlineData("interval: 5s, mark: test", null)]
    [InlineData("mark: good", null)] // somebody looks through it
    public void A_finder_that_nobody_looks_through_is_asked_for_where_another_take_has_it(string take, string? things) =>
        Assert.Equal(
            things is null ? [] : [$"light through the finder in {things}: closed or not, not noted at rolls/r01.yaml"],
            Asked(
                $$"""
                log:
                  - take: {scene: 1, shot: A, take: 1, to: 12+00, finder: closed, interval: 5s, mark: good}
                  - take: {scene: 1, shot: A, take: 2, to: 20+00, {{take}}}
                """,
                "finder"
            )
        );

    [Theory]
    [InlineData("", "fade-out: 48fr", "fades in 1 body: shutter marks not in the kit at kit.yaml")]
    [InlineData("", "fade-in: 24fr", "fades in 1 body: shutter marks not in the kit at kit.yaml")]
    [InlineData("marks: [{mark: open, open: 1}, {mark: closed, open: 0}], ", "fade-out: 48fr", null)]
    [InlineData("", "stop: 8", null)]
    public void A_body_that_fades_is_asked_for_the_marks_of_its_shutter(string marks, string take, string? said) =>
        Assert.Equal(
            said is null ? [] : [said],
            Asked(
                $$"""
                log:
                  - take: {scene: 1, shot: A, take: 1, to: 12+00, {{take}}, mark: good}
                # kit.yaml
                bodies:
                  - {body: B1, speeds: [16, 24], {{marks}}shutter: 133}
                """,
                "marks"
            )
        );

    [Theory]
    [InlineData("perforation: 1R", ", winding: B", "side of the holes of 1 lot: winding not noted at stock.yaml")]
    [InlineData("perforation: 1R, winding: B", ", winding: B", null)]
    [InlineData("perforation: 2R", ", winding: B", null)]
    [InlineData("perforation: 1R", "", null)]
    public void Film_with_one_row_is_asked_which_way_it_is_wound_where_a_body_takes_one_of_them(string lot, string body, string? said) =>
        Assert.Equal(
            said is null ? [] : [said],
            Asked(
                $$"""
                # stock.yaml
                lots:
                  - {lot: N250-A, stock: Colour negative 250 D, ei: 250, process: ecn-2, length: 100ft, units: 4, {{lot}}}
                # kit.yaml
                bodies:
                  - {body: B1, speeds: [16, 24], shutter: 133, sprockets: one-side{{body}}}
                """,
                "winding"
            )
        );

    [Theory]
    [InlineData(", made-for: prism", 10, "finder focus of 1 lens: made for prism or air, not in the kit at kit.yaml")]
    [InlineData(", made-for: prism", 75, null)] // long ones are made for both
    [InlineData("", 10, null)]
    public void A_short_lens_is_asked_what_it_is_made_for_where_another_one_says_it(string other, int focal, string? said) =>
        Assert.Equal(
            said is null ? [] : [said],
            Asked(
                $$"""
                # kit.yaml
                lenses:
                  - {lens: 25mm, focal: 25{{other}}}
                  - {lens: other, focal: {{focal}}}
                """,
                "made-for"
            )
        );

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

    static IEnumerable<string> Asked(string example, string question) =>
        from open in Questions.Of(ProductionReader.Read(BaseProduction.With(example)).Production!, [])
        where open.Question == question
        select $"{open.Message} at {Assert.Single(open.Places).File}";

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
