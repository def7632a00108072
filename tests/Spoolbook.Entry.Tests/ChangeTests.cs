using Spoolbook.Reading.Files;

namespace Spoolbook.Entry.Tests;

/// <summary>An assistant types into the sheet of takes: that changes in the roll files, and nothing else.</summary>
public class ChangeTests
{
    static readonly ShootInMemory _sample = new(new FolderFiles(Repository.Sample));

    [Theory]
    [InlineData("R02 2A/4", "Mark", "G", "mark: hold", "mark: good")]
    [InlineData("R02 2A/4", "Mark", "ng", "mark: hold", "mark: ng")]
    [InlineData("R02 2A/4", "Lens", "10mm", "lens: 25mm", "lens: 10mm")]
    [InlineData("R02 2A/4", "Stop", "5.6/8", "stop: 5.6", "stop: 5.6/8")]
    [InlineData("R02 2A/4", "Focus", "5 ft 6 in", "focus: 7ft", "focus: 5 ft 6 in")]
    [InlineData("R02 2A/4", "Focus", "∞", "focus: 7ft", "focus: inf")]
    [InlineData("R02 2A/4", "Stop", 8, "stop: 5.6", "stop: 8")]
    [InlineData(
        "R02 2A/4",
        "Remarks",
        "Spring: ran down",
        "note: \"Forgot to wind, died at the end. First half is fine\"",
        "note: \"Spring: ran down\""
    )]
    [InlineData("R02 2A/4", "Remarks", "-", ", note: \"Forgot to wind, died at the end. First half is fine\"", "")]
    [InlineData("R02 2B/3", "Remarks", "=1+1", "at: 14:29", "at: 14:29, note: =1+1")]
    [InlineData("R02 2B/3", "Filter", "ND3 + PL", "stop: 4", "stop: 4, filter: [ND3, PL]")]
    [InlineData("R02 3B/2", "Filter", "ND6", "filter: [ND3, PL]", "filter: ND6")]
    [InlineData("R02 2B/1", "Day", "2026-10-04", "finder", "finder")]
    [InlineData("R02 2C/1", "To frame", 1569, "to: 39.2ft", "to: 39.23ft")]
    [InlineData("R01 1C/2", "To frame", 2271, "to: 2270fr", "to: 2271fr")]
    [InlineData("R01 1A/2", "To frame", 735, "to: 18+14", "to: 18+15")]
    [InlineData("R01 1A/2", "To frame", "18+15", "to: 18+14", "to: 18+15")]
    [InlineData("R01 1A/2", "To", 18.375, "to: 18+14", "to: 18+15")]
    [InlineData("R01 1A/2", "Length", 9.625, "to: 18+14", "to: 18+15")]
    [InlineData("R01 1A/2", "Frames", 385, "to: 18+14", "to: 18+15")]
    [InlineData("R01 1A/2", "From frame", 351, "to: 18+14", "from: 8+31, to: 18+14")]
    [InlineData("R03 5D/2", "To frame", 2525, "to: 61+36", "to: 61+37")]
    [InlineData("R02 2A/4", "Take", 5, "take: 4", "take: 5")]
    public void One_cell_changes_one_key_and_no_other_character(string take, string head, object typed, string before, string after)
    {
        if (head == "Day")
        {
            (before, after) = ("at: 14:22", "on: 2026-10-04, at: 14:22");
        }

        var difference = _sample.Difference(new TakesBook(_sample.Workbook).Type(take, head, typed).Saved()).ToList();

        // A take without a day has the day of the take before it, so the next one gets its own day written down.
        var (was, now) = (difference.Where(l => l[0] == '-').ToList(), difference.Where(l => l[0] == '+').ToList());
        Assert.Equal(head == "Day" ? (2, 2) : (1, 1), (was.Count, now.Count));
        Assert.Contains(before, was[0], StringComparison.Ordinal);
        Assert.Equal("+" + was[0][1..].Replace(before, after, StringComparison.Ordinal), now[0]);
    }

    [Theory]
    [InlineData("Remarks", "First pass.", "-      note: First pass. Wings only, against the sky.", "+      note: First pass.")]
    [InlineData("Stop", "11", "-      stop: 11/16", "+      stop: 11")]
    [InlineData("Remarks", "-", "-      note: First pass. Wings only, against the sky.", null)]
    [InlineData("Filter", "ND3", null, "+      filter: ND3")]
    public void A_take_on_lines_of_its_own_keeps_them(string head, string typed, string? before, string? after) =>
        Assert.Equal(
            ((string?[])[before, after]).OfType<string>(),
            _sample.Difference(new TakesBook(_sample.Workbook).Type("R03 5A/1", head, typed).Saved())
        );

    [Fact]
    public void A_take_that_writes_its_length_in_seconds_still_does() =>
        Assert.Contains(
            "frames: 12.25s",
            _sample.Difference(new TakesBook(_sample.Workbook).Type("R01 1B/1", "To frame", 1400).Saved()).Last(),
            StringComparison.Ordinal
        );

    [Fact]
    public void Another_speed_of_one_take_leaves_the_next_as_fast_as_its_row_says()
    {
        var difference = _sample.Difference(new TakesBook(_sample.Workbook).Type("R02 2B/2", "Speed", 48).Saved()).ToList();

        Assert.Equal(4, difference.Count);
        Assert.Contains("take: 2, to: 30+23, speed: 48, lens", difference[2], StringComparison.Ordinal);
        Assert.Contains("take: 3, to: 35+13, speed: 24, lens", difference[3], StringComparison.Ordinal);
    }

    [Fact]
    public void A_take_that_starts_where_the_film_is_follows_the_one_before_and_says_so()
    {
        var plan = _sample.Import(new TakesBook(_sample.Workbook).Type("R01 1A/2", "To frame", 735).Saved());

        Assert.Contains(plan.Notes, n => n.Message == "1A/3 starts at frame 735 now, where the take before it ended.");
    }

    [Fact]
    public void Two_new_rows_between_takes_become_two_lines_in_their_order()
    {
        var book = new TakesBook(_sample.Workbook)
            .Type("R02 2B/2", "From frame", 1110)
            .Insert("R02 2B/1", ("Roll", "R02"), ("Scene", "2"), ("Shot", "B"), ("Take", 4), ("Mark", "NG"), ("To frame", 1105))
            .Insert(
                "R02 2B/4",
                ("Roll", "R02"),
                ("Scene", "2"),
                ("Shot", "B"),
                ("Take", 5),
                ("Mark", "T"),
                ("To frame", 1110),
                ("Speed", 24),
                ("Lens", "75mm"),
                ("Remarks", "Slate, late")
            );

        Assert.Equal(
            [
                "+  - take: {scene: 2, shot: B, take: 4, to: 27+25, mark: ng}",
                "+  - take: {scene: 2, shot: B, take: 5, to: 27+30, lens: 75mm, mark: test, note: \"Slate, late\"}",
            ],
            _sample.Difference(book.Saved())
        );
    }

    [Fact]
    public void A_new_take_after_a_reload_is_counted_from_the_new_zero()
    {
        // The zero of R03 moved by 1+08 in the reload.
        var book = new TakesBook(_sample.Workbook).Insert(
            "R03 5C/4",
            ("Roll", "R03"),
            ("Scene", "5"),
            ("Shot", "C"),
            ("Take", 5),
            ("Mark", "NG"),
            ("From frame", 3722),
            ("To frame", 3762)
        );

        Assert.Equal("+  - take: {scene: 5, shot: C, take: 5, to: 92+34, mark: ng}", Assert.Single(_sample.Difference(book.Saved())));
    }

    [Fact]
    public void A_row_sorted_elsewhere_is_still_its_take()
    {
        var book = new TakesBook(_sample.Workbook)
            .Type("R02 2A/4", "Mark", "G")
            .Change(sheet =>
            {
                var data = sheet.Elements().Single(e => e.Name.LocalName == "sheetData");
                var rows = data.Elements().Skip(4).Reverse().ToList();
                rows.ForEach(r => r.Remove());
                data.Add(rows);
            });

        Assert.Equal(2, _sample.Difference(book.Saved()).Count());
    }

    [Fact]
    public void A_take_that_is_not_in_the_table_stays_and_is_noted()
    {
        var book = new TakesBook(_sample.Workbook).Remove("R02 2A/4");

        var plan = _sample.Import(book.Saved());

        Assert.Empty(plan.Refused);
        Assert.Contains(plan.Notes, n => n.Message == "R02 has takes that are not in the table: 2A/4.");
    }

    [Fact]
    public void An_empty_cell_takes_nothing_out_and_is_noted()
    {
        var plan = _sample.Import(new TakesBook(_sample.Workbook).Type("R02 2A/4", "Remarks", null).Saved());

        Assert.Empty(plan.Files);
        Assert.Contains(plan.Notes, n =>
            n.Message.StartsWith("This cell is empty, and the roll file says something", StringComparison.Ordinal)
        );
    }
}
