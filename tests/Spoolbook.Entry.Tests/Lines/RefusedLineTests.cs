using Spoolbook.Entry.Lines;

namespace Spoolbook.Entry.Tests.Lines;

/// <summary>A line that is in doubt writes nothing, and one finding says where, why, and what to write instead.</summary>
public sealed class RefusedLineTests
{
    [Theory]
    [InlineData("1A/4 75 G", "line/two-readings 6: `75` can be `to 75+00` or `lens 75`. Write `1A/4 to 75+00 G` or `1A/4 lens 75 G`")]
    [InlineData("12AB/3 70 G", "line/two-readings 1: `12AB/3` can be `take scene 12 shot AB take 3` or `take scene 12A shot B take 3`.")]
    [InlineData(
        "1A/4 70 f5.6 1/3 G",
        "line/two-readings 14: `1/3` can be `stop \"5.6 1/3\"` or `shutter 1/3`. Write `1A/4 70 stop \"5.6 1/3\" G`"
    )]
    [InlineData("amend 1A/3 6ft", "line/two-readings 12: `6ft` can be `to 6ft` or `focus 6ft`.")]
    [InlineData("1A/4 70 G good", "line/said-twice 11: `mark` is given twice: by `G` and by `good`. Leave one of them out: `1A/4 70 G`.")]
    [InlineData("1A/4 to 70 frames 96 G", "line/said-twice 12: `to` is given twice")]
    [InlineData("1A/4 to 70 to 80 G", "line/said-twice 12: ")]
    [InlineData("1A/4 70 soft G", "line/unreadable 9: `soft` cannot be read here.")]
    [InlineData(
        "1A/4 70 G 5.6",
        "line/unreadable 11: `5.6` cannot be read here. If the remark begins here, put a colon before it: `1A/4 70 G : 5.6`"
    )]
    [InlineData("1A/4 70 G fade-uot 48", "line/unreadable 11: `fade-uot` cannot be read here. Did you mean `1A/4 70 G fade-out 48`?")]
    [InlineData("1A/4 70 G tungstn", "line/unreadable 11: `tungstn` cannot be read here. Did you mean `1A/4 70 G tungsten`?")]
    [InlineData(
        "1A/4 70 G lens: 25mm",
        "line/unreadable 11: `lens` has a colon after it, which begins the remark. Did you mean `1A/4 70 G lens 25mm`?"
    )]
    [InlineData("1A/4 70 G \"soft", "line/unreadable 11: The quotation marks do not close")]
    [InlineData("rewnd 20", "line/unreadable 1: `rewnd` is neither a verb nor a slate. Did you mean `rewind 20`?")]
    [InlineData("G 1A/4 to 70", "line/unreadable 1: `G` is neither a verb nor a slate. Did you mean `1A/4 G to 70`?")]
    [InlineData("hold 1A/3", "line/unreadable 1: `hold` is neither a verb nor a slate. Did you mean `amend 1A/3 hold`?")]
    [InlineData("1A 4 70 G", "line/unreadable 1: `1A 4` is not a slate.")]
    [InlineData("1A/x 70 G", "line/unreadable 1: `1A/x` is not a slate.")]
    [InlineData("#K3 1A/4 70 G", "line/unreadable 1: `#K3` is not the number of an entry.")]
    [InlineData("day tomorrow", "line/unreadable 5: `tomorrow` is not a date.")]
    [InlineData("1A/4 70", "line/needs 1: The take has no mark: G, H, NG or T. Write `1A/4 70 G`")]
    [InlineData("1A/4 70: soft", "line/needs 1: The take has no mark: G, H, NG or T. Write `1A/4 70 G: soft`")]
    [InlineData("1A/4 G", "line/needs 1: The line gives no `to`. Write `1A/4 G to 70`")]
    [InlineData("unload", "line/needs 1: The line gives no `on`. Write `unload 9:15`")]
    [InlineData("unload 2026-10-05", "line/needs 1: 2026-10-05 has no time. Write `unload 2026-10-05 9:15`")]
    [InlineData("amend 1A/3", "line/needs 1: The line changes nothing.")]
    [InlineData("note", "line/needs 1: The note is empty.")]
    [InlineData("#K3-12", "line/needs 1: The line does not say what happened.")]
    [InlineData("1A/4 70 G focus 9", "line/bad-value 17: `9` has no unit. Write `9ft` or `9m`.")]
    [InlineData("1A/4 70 G mute no wound", "line/two-readings 16: `no wound` can be `no wound yes` or `yes wound no`.")]
    [InlineData("1A/4 70+40 G", "line/bad-value 6: `70+40` has a foot or more in its frames (40 frames make a foot of 16mm)")]
    [InlineData("1A/4 70 G lens 26mm", "line/unknown-name 16: The production has no lens `26mm`. Did you mean `1A/4 70 G lens 25mm`?")]
    [InlineData("load R04 N520-A/1 9:15", "line/unknown-name 10: The production has no lot `N520-A`.")]
    [InlineData("R3: wind", "line/unknown-name 1: The production has no roll `R3`. Did you mean `R03: wind`?")]
    [InlineData("strike 1A/4", "line/unknown-name 8: R03 has no take `1A/4`. Did you mean `strike 1A/3`?")]
    [InlineData(
        "amend 1A/3 X",
        "line/unknown-name 12: `X` is no mark: there are G, H, NG and T. If the remark begins here, put a colon before it: `amend 1A/3 : X`"
    )]
    [InlineData("amend last x", "line/unknown-name 12: `x` is no mark: there are G, H, NG and T.")]
    [InlineData("1A/4 70 V", "line/unknown-name 9: `V` is no mark: there are G, H, NG and T.")]
    [InlineData("1A/4 70 G X", "line/unreadable 11: `X` cannot be read here.")]
    [InlineData(
        "unload 13:30 tail 2, boxes 45 22 21 12 100",
        "line/unreadable 22: `boxes` cannot be read here. Write each box of the sheet after"
    )]
    [InlineData(
        "unload 13:30 tail 2 gut 45+08",
        "line/unreadable 21: `gut` cannot be read here. Write each box of the sheet after its name"
    )]
    [InlineData("unload 13:30 tail 2, good 45 H", "line/unreadable 30: `H` cannot be read here.")]
    [InlineData("unload 13:30 no good", "line/unreadable 14: `no` cannot be read here.")]
    [InlineData("unload 13:30: soft at the end", "line/unreadable 15: `soft` cannot be read here.")]
    [InlineData("unload 13:30 tial 2", "line/unreadable 14: `tial` cannot be read here. Did you mean `unload 13:30 tail 2`?")]
    [InlineData("unload 13:30 G 45 good 46", "line/said-twice 19: `good` is given twice: by `G` and by `good`. Leave one of them out:")]
    [InlineData("unload 13:30 good -5", "line/bad-value 19: Box good: `-5` is less than 0.")]
    [InlineData(
        "load R04 N250-A/3 9:15 new loops",
        "line/unreadable 24: `new` cannot be read here. Nothing can follow here, not even a"
    )]
    [InlineData("load R04 N250-A/3 9:15: scratched can", "line/unreadable 25: `scratched` cannot be read here.")]
    [InlineData("strike last take", "line/unreadable 13: `take` cannot be read here. Nothing can follow here")]
    [InlineData("strike last: wrong", "line/unreadable 14: `wrong` cannot be read here.")]
    [InlineData("strike 1A/3: wrong", "line/unreadable 14: `wrong` cannot be read here.")]
    [InlineData("strike scene 1 shot A take 3 wrong", "line/unreadable 30: `wrong` cannot be read here.")]
    [InlineData("strike scene 1 shot A take 3: wrong", "line/unreadable 31: `wrong` cannot be read here.")]
    [InlineData("R03: day 2026-10-03", "line/unreadable 1: `R03` cannot be read here. Did you mean `day 2026-10-03`?")]
    [InlineData("#K3-12 strike: wrong", "line/unreadable 16: `wrong` cannot be read here.")]
    public void The_finding_shows_the_users_own_line_as_it_could_be_said(string line, string finding)
    {
        var said = Said.Keys(line);

        Assert.True(said.StartsWith(finding, StringComparison.Ordinal), said);
        Assert.Equal(("day.txt", 7), (Said.Line(line).Refused!.Place.File, Said.Line(line).Refused!.Place.Line));
        Assert.Contains(Said.Line(line).Refused!.Check, LineChecks.All);
    }

    [Fact]
    public void Without_a_roll_in_a_camera_there_is_nothing_to_log() =>
        Assert.StartsWith("line/needs 1: No roll is in a camera.", Said.Keys("1A/4 70 G", Said.Empty), StringComparison.Ordinal);

    [Fact]
    public void A_box_is_amended_on_the_roll_that_is_out_and_is_no_mark_of_a_take()
    {
        var context = Said.Context.After(Said.Line("unload 16:45 good 45").Said!);

        Assert.Equal("good: 56", Said.Keys("R03: amend last good 56", context));
        Assert.Equal(
            "line/needs 1: No roll is in a camera. The last that came out is R03. Name the roll: `R03: amend last good 56`",
            Said.Keys("amend last good 56", context)
        );
        Assert.Equal("good: 56", Said.Keys("R03: amend last G 56", context));
    }

    [Fact]
    public void A_mark_with_a_length_behind_it_may_be_a_box_of_the_roll_that_just_came_out()
    {
        var context = Said.Context.After(Said.Line("unload 16:45").Said!);
        context = context.After(Said.Line("load R04 N250-A/3 in B2 17:00", context).Said!);
        context = context.After(Said.Line("1A/4 to 20 f8 G", context).Said!);

        Assert.Equal(
            "line/two-readings 12: `good 56` can be the mark and the end of the last take, or a box of the sheet of R03, which is out. "
                + "Write `amend last to 56 good` or `R03: amend last good 56`",
            Said.Keys("amend last good 56", context)
        );
        Assert.Equal("to: 56+00, mark: good", Said.Keys("amend last to 56 good", context));
        Assert.Equal("mark: good", Said.Keys("amend last good", context));
    }

    [Fact]
    public void The_last_entry_is_amended_in_the_words_of_its_own_verb()
    {
        var context = Said.Context.After(Said.Line("run off 90 capped").Said!);

        Assert.Equal("to: 100+00, lens: open", Said.Keys("amend last 100 open", context));
        Assert.StartsWith("line/", Said.Keys("amend last NG 9ft", context), StringComparison.Ordinal);
    }

    [Fact]
    public void With_two_rolls_in_cameras_the_line_names_one()
    {
        var context = Said.Context.After(Said.Line("load R04 N250-A/3 in B2 9:15").Said!);

        Assert.StartsWith(
            "line/needs 1: More than one roll is in a camera: R03, R04. Write `R03: 1A/4 70 G`",
            Said.Keys("1A/4 70 G", context),
            StringComparison.Ordinal
        );
        Assert.Equal("R04", Said.Line("#K3-1 R04: wind", context).Said!.Roll);
    }

    [Theory]
    [InlineData("1A/4 70 G : X", "X")]
    [InlineData("1A/4 70 G lens flare", "lens flare")]
    [InlineData("1A/4 70 G focus soft, the mark slipped", "focus soft, the mark slipped")]
    [InlineData("1A/4 70 G Dog in shot again", "Dog in shot again")]
    [InlineData("1A/4 70 G Leila: once more", "Leila: once more")]
    [InlineData("1A/4 70 G \"quiet\" he said", "\"quiet\" he said")]
    [InlineData("1A/4 70 G : 2 people", "2 people")]
    public void Words_of_every_day_are_the_remark(string line, string remark) =>
        Assert.EndsWith($", note: {remark}", Said.Keys(line), StringComparison.Ordinal);
}
