using System.Xml.Linq;
using Spoolbook.Papers.CameraReports;
using Spoolbook.Papers.Ledger;
using Spoolbook.Papers.Pictures;
using Spoolbook.Papers.Tests.Ledger;
using Spoolbook.Papers.Tests.Workbook;
using Spoolbook.Papers.Wording;
using Spoolbook.Reading.Files;

namespace Spoolbook.Papers.Tests.Pictures;

/// <summary>What the picture of a roll says to whoever has only the picture.</summary>
public class StripPictureTests
{
    static readonly string Takes =
        "  - take: {scene: 1, shot: A, take: 1, to: 20+00, mark: good}\n  - take: {scene: 1, shot: A, take: 2, to: 40+00, mark: ng}\n";

    [Fact]
    public void A_roll_that_was_exposed_once_has_one_row_however_often_it_was_rewound()
    {
        var picture = Picture(Takes + "  - rewind: {to: 30+00, shutter: closed}\n  - run-off: {to: 60+00, lens: capped}\n");

        Assert.Contains(">takes<", picture, StringComparison.Ordinal);
        Assert.DoesNotContain(">exp. ", picture, StringComparison.Ordinal);
    }

    [Fact]
    public void Film_that_was_exposed_twice_has_a_second_row()
    {
        var picture = Picture(
            Takes
                + "  - rewind: {to: 4+00, shutter: closed}\n"
                + "  - take: {scene: 2, shot: A, take: 1, to: 20+00, mark: good}\n"
                + "  - take: {scene: 3, shot: A, take: 1, from: 40+00, to: 60+00, mark: good}\n"
        );

        Assert.Contains(">exp. 1<", picture, StringComparison.Ordinal);
        Assert.Contains(">exp. 2<", picture, StringComparison.Ordinal);
        Assert.DoesNotContain(">exp. 3<", picture, StringComparison.Ordinal);
    }

    [Fact]
    public void The_third_of_a_chain_of_dissolves_is_no_third_exposure()
    {
        var picture = Picture(
            "  - take: {scene: 1, shot: A, take: 1, to: 20+00, mark: good}\n"
                + "  - rewind: {to: 18+00, shutter: closed}\n"
                + "  - take: {scene: 1, shot: B, take: 1, to: 40+00, mark: good}\n"
                + "  - rewind: {to: 38+00, shutter: closed}\n"
                + "  - take: {scene: 1, shot: C, take: 1, to: 60+00, mark: good}\n"
        );

        Assert.Contains(">exp. 2<", picture, StringComparison.Ordinal);
        Assert.DoesNotContain(">exp. 3<", picture, StringComparison.Ordinal);
    }

    [Fact]
    public void A_good_take_has_a_heavy_frame_and_bold_type()
    {
        var picture = Picture(Takes);

        Assert.Contains("font-weight=\"bold\" fill=\"#222222\">1A/1 G<", picture, StringComparison.Ordinal);
        Assert.Contains("\" fill=\"#222222\">1A/2 NG<", picture, StringComparison.Ordinal);
        Assert.Single(picture.Split("stroke-width=\"1.5\"").Skip(1));
    }

    [Fact]
    public void A_good_take_on_film_that_a_worse_take_used_does_not_look_good()
    {
        var picture = Picture(
            Takes
                + "  - rewind: {to: 4+00, shutter: closed}\n"
                + "  - take: {scene: 2, shot: A, take: 1, to: 20+00, mark: ng}\n"
                + "  - take: {scene: 3, shot: A, take: 1, from: 40+00, to: 60+00, mark: good}\n"
        );

        Assert.Contains("\" fill=\"#222222\">1A/1 G → NG<", picture, StringComparison.Ordinal);
        Assert.DoesNotContain("font-weight=\"bold\" fill=\"#222222\">1A/1", picture, StringComparison.Ordinal);
        Assert.Single(picture.Split("stroke-width=\"1.5\"").Skip(1));
    }

    [Theory]
    [InlineData("en", "−1 each")]
    [InlineData("de", "je −1")]
    public void Two_exposures_alike_say_what_each_of_them_had(string language, string each)
    {
        const string rest = "shot: A, take: 1, to: 20+00, stop: 11, reading: 8, exposed: -1, mark: good}\n";
        var source = Source($"  - take: {{scene: 1, {rest}  - rewind: {{to: 4+00, shutter: closed}}\n  - take: {{scene: 2, {rest}");

        var pictures = EffectPicture.DrawAll(
            source.Shoot.Rolls[0],
            new PaperFormat(source.Books.Production, language == "de" ? Workbooks.German : Workbooks.English)
        );

        Assert.Contains(each, string.Concat(pictures), StringComparison.Ordinal);
    }

    [Fact]
    public void The_causes_of_waste_are_lettered_and_the_letters_explained()
    {
        var picture = Picture(Takes + "  - run-off: {to: 98+00, lens: capped}\n");

        Assert.Contains(">Waste\u00A064+00: h head, t tail, r run-off<", picture, StringComparison.Ordinal);
        Assert.Contains(">h<", picture, StringComparison.Ordinal);
        Assert.Contains(">run-off<", picture, StringComparison.Ordinal);
    }

    [Fact]
    public void The_legend_says_how_much_film_is_good_and_how_much_is_not()
    {
        var picture = Picture(Takes + "  - run-off: {to: 98+00, lens: capped}\n");

        // 4+00 to 20+00, and 20+00 to 40+00.
        Assert.Contains(">Good\u00A016+00<", picture, StringComparison.Ordinal);
        Assert.Contains(">No good\u00A020+00<", picture, StringComparison.Ordinal);
    }

    [Fact]
    public void Film_that_was_exposed_twice_says_so_in_a_pattern_of_its_own_and_in_words()
    {
        var picture = Picture(
            Takes + "  - rewind: {to: 4+00, shutter: closed}\n" + "  - take: {scene: 2, shot: A, take: 1, to: 20+00, mark: good}\n"
        );

        // 4+00 to 20+00, under both takes.
        Assert.Contains(">exposed twice<", picture, StringComparison.Ordinal);
        Assert.Contains(">exposed 2×\u00A016+00<", picture, StringComparison.Ordinal);
        Assert.DoesNotContain("exposed", Picture(Takes).Split("</desc>")[1], StringComparison.Ordinal);
    }

    [Fact]
    public void A_stretch_that_is_too_narrow_for_the_words_has_how_often_it_was_exposed()
    {
        var picture = Picture(
            Takes + "  - rewind: {to: 16+00, shutter: closed}\n" + "  - take: {scene: 2, shot: A, take: 1, to: 20+00, mark: good}\n"
        );

        Assert.Contains(">2×<", picture, StringComparison.Ordinal);
    }

    // Where "1A/3 G" has no room, its circle stays, or the lab takes it for a take that nobody wants.
    [Theory]
    [InlineData("42+20")]
    [InlineData("43+20")]
    [InlineData("44+00")]
    [InlineData("46+00")]
    public void A_take_that_is_to_be_scanned_has_its_circle_however_narrow_it_is(string to)
    {
        var picture = Picture(
            Takes
                + $"  - take: {{scene: 1, shot: A, take: 3, to: {to}, mark: good}}\n"
                + "  - take: {scene: 1, shot: A, take: 4, to: 60+00, mark: ng}\n",
            "lab: {name: Brackwater, deliver: {takes: good}}"
        );

        Assert.Matches(">1A/3 ?\u24BC<", picture);
        Assert.DoesNotContain(">1A/3<", picture, StringComparison.Ordinal);
        Assert.Contains(">1A/4 NG<", picture, StringComparison.Ordinal);
    }

    [Fact]
    public void The_legend_explains_the_dark_of_a_fade_where_there_is_one()
    {
        const string faded = "  - take: {scene: 1, shot: A, take: 1, to: 20+00, fade-out: 48fr, mark: good}\n";

        Assert.Contains(">fade<", Picture(faded), StringComparison.Ordinal);
        Assert.DoesNotContain(">fade<", Picture(Takes), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("40+20")]
    [InlineData("41+00")]
    [InlineData("41+20")]
    [InlineData("42+00")]
    [InlineData("44+00")]
    public void Waste_with_a_letter_on_it_still_shows_its_pattern_at_both_sides(string to)
    {
        var picture = Picture(Takes + $"  - run-off: {{to: {to}, lens: capped}}\n");
        var boxes = XElement.Parse(picture).Descendants().Where(e => e.Name.LocalName == "rect").ToList();
        var wastes = boxes.Where(b => (string?)b.Attribute("fill") == "#dedede").Select(Across).ToList();
        var plates = boxes.Where(b => (string?)b.Attribute("stroke") == "none").Select(Across).ToList();

        Assert.NotEmpty(wastes);
        Assert.All(wastes, waste =>
            Assert.All(plates.Where(p => p.Y > waste.Y && p.Y < waste.Y + 9 && p.From < waste.To && p.To > waste.From), plate =>
                Assert.True(plate.From - waste.From >= 0.99 && waste.To - plate.To >= 0.99, $"{plate} in {waste}")
            )
        );

        static (double From, double To, double Y) Across(XElement box)
        {
            var x = (double)box.Attribute("x")!;
            return (x, x + (double)box.Attribute("width")!, (double)box.Attribute("y")!);
        }
    }

    static string Picture(string log, string lab = "")
    {
        var shoot = Source(log, lab);
        return StripPicture.Draw(
            shoot.Shoot.Rolls[0],
            new PaperFormat(shoot.Books.Production, Workbooks.English),
            account: shoot.Books.Metric.Of(shoot.Shoot.Rolls[0])
        );
    }

    static LedgerSource Source(string log, string lab = "") =>
        Shoots.Of(
            TextFiles.OneFile(
                $$"""
                spoolbook: 1
                title: The Ferry Light
                code: FERRY
                {{lab}}
                lots:
                  - {lot: D, stock: 250 D, ei: 250, balance: daylight, process: ecn-2, length: 100ft, units: 1}
                bodies:
                  - {body: B1, speeds: [24], shutter: 170}
                rolls:
                  - roll: R1
                    lot: D
                    unit: 1
                    body: B1
                    load: {on: 2026-10-02 09:00, light: subdued, head: 4+00, speed-after: 24}
                    unload: {on: 2026-10-02 16:00, light: subdued, tail: 2+00}
                    log:
                {{string.Concat(log.Split('\n').Where(l => l.Length > 0).Select(l => "    " + l + "\n"))}}
                """
            )
        );
}
