using Spoolbook.Entry.Lines;

namespace Spoolbook.Entry.Tests.Lines;

/// <summary>What an assistant says in a line is what the roll file gets.</summary>
public sealed class LineTests
{
    const string Kept = "lens: 10mm, stop: 8/11, filter: [ND6, PL]";

    [Theory]
    [InlineData(
        "1A/4 to 70 16fps f8 25mm 9ft G soft at the end",
        "scene: 1, shot: A, take: 4, to: 70+00, speed: 16, lens: 25mm, stop: 8, filter: [ND6, PL], focus: 9ft, mark: good, "
            + "note: soft at the end"
    )]
    [InlineData("1A/4 70 G", $"scene: 1, shot: A, take: 4, to: 70+00, {Kept}, focus: 5ft 6in, mark: good")]
    [InlineData("G 70 1A/4", "line/unreadable")]
    [InlineData("take 1A/4 NG to 70+12 ", $"scene: 1, shot: A, take: 4, to: 70+12, {Kept}, focus: 5ft 6in, mark: ng")]
    [InlineData("1A/next 1252fr h", $"scene: 1, shot: A, take: 4, to: 1252fr, {Kept}, focus: 5ft 6in, mark: hold")]
    [InlineData("next 12s T", $"scene: 1, shot: A, take: 4, frames: 12s, {Kept}, focus: 5ft 6in, mark: test")]
    [InlineData(
        "next f8 12.5s G",
        "scene: 1, shot: A, take: 4, frames: 12.5s, lens: 10mm, stop: 8, filter: [ND6, PL], focus: 5ft 6in, mark: good"
    )]
    [InlineData("next 70 12s G", "line/unreadable")]
    [InlineData("next 12s 70 G", "line/unreadable")]
    [InlineData("next to 12s G", $"scene: 1, shot: A, take: 4, to: 12s, {Kept}, focus: 5ft 6in, mark: good")]
    [InlineData("rewind 12s", "to: 12s")]
    [InlineData("1B/next 9.5m good", $"scene: 1, shot: B, take: 1, to: 9.5m, {Kept}, mark: good")]
    [InlineData("1B/next 9.5m 2.1m good", $"scene: 1, shot: B, take: 1, to: 9.5m, {Kept}, focus: 2.1m, mark: good")]
    [InlineData("1A/9 9.5m good", $"scene: 1, shot: A, take: 9, to: 9.5m, {Kept}, focus: 5ft 6in, mark: good")]
    [InlineData(
        "take scene 12A shot B take 3 to 70 G no filter lens - focus inf",
        "scene: 12A, shot: B, take: 3, to: 70+00, stop: 8/11, focus: inf, mark: good, filter -, lens -"
    )]
    [InlineData(
        "1A/4 to 70, f/8; nd6 85 5ft 6in G: 25mm was soft, 2 of 3",
        "scene: 1, shot: A, take: 4, to: 70+00, lens: 10mm, stop: 8, filter: [ND6, 85], focus: 5ft 6in, mark: good, "
            + "note: 25mm was soft, 2 of 3"
    )]
    [InlineData(
        "1A/4 frames 96 T2 half G ines 9:15 2026-10-05 twos daylight 50hz M1 E1 sync mute wound no slate tail fade out 48",
        "scene: 1, shot: A, take: 4, frames: 96fr, lens: 10mm, stop: T2, meter: M1, filter: [ND6, PL], shutter: half, light: daylight, "
            + "lamps: 50hz, focus: 5ft 6in, mark: good, fade-out: 48fr, single-frame: twos, sync: yes, mute: yes, slate: tail, motor: E1, "
            + "wound: no, by: ines, on: 2026-10-05, at: 09:15"
    )]
    [InlineData(
        "1A/4 70 G 1/2 stop \"5.6 1/3\" reading 5.6 measured 6ft,9ft counter 400 note \"G: 25mm\"",
        "scene: 1, shot: A, take: 4, to: 70+00, lens: 10mm, stop: 5.6 1/3, reading: 5.6, filter: [ND6, PL], shutter: 1/2, focus: 5ft 6in, "
            + "measured: [6ft, 9ft], mark: good, counter: 400, note: G: 25mm"
    )]
    [InlineData("wind", "")]
    [InlineData("wind 9:17 to the full", "at: 09:17, note: to the full")]
    [InlineData("rewind 27+28 closed zeroed", "to: 27+28, shutter: closed, counter-zeroed: yes")]
    [InlineData("rewind 27 in dark open", "to: 27+00, shutter: open, in: dark")]
    [InlineData("run off 100", "to: 100+00")]
    [InlineData("run-off 100ft capped 12:33", "to: 100ft, lens: capped, at: 12:33")]
    [InlineData("fog 1+20 2+00", "before: 1+20, after: 2+00")]
    [InlineData("fog 2 3: the door", "before: 2+00, after: 3+00, note: the door")]
    [InlineData(
        "reload 13:40 by ines in B2 dark zero-moved 1+08 lost 2 to 39+20",
        "on: 2026-10-04 13:40, by: ines, body: B2, light: dark, zero-moved: 1+08, lost: 2+00, to: 39+20"
    )]
    [InlineData("note Clouds came in", "note: Clouds came in")]
    [InlineData("note 9:15 Roll out at 13:40, to 70 G", "at: 09:15, note: Roll out at 13:40, to 70 G")]
    [InlineData("note: to 70", "note: to 70")]
    [InlineData("unload 16:45 tail 2, 38 left", "on: 2026-10-04 16:45, tail: 2+00, left: 38+00")]
    [InlineData(
        "unload 2026-10-05 2:00 dov subdued thrown left 4+10",
        "on: 2026-10-05 02:00, by: dov, light: subdued, short-end: thrown, left: 4+10"
    )]
    [InlineData("amend 1A/3 NG 6ft", "focus: 6ft, mark: ng")]
    [InlineData("amend 1A/3 filter - : it fell off", "note: it fell off, filter -")]
    [InlineData("amend 1A/3 note -", "note -")]
    [InlineData("amend 1A/3 no note", "note -")]
    [InlineData("amend 1A/3 note - and on", "note: - and on")]
    [InlineData("R03: wind", "")]
    [InlineData("#K3-12 R03: 1A/4 70 G", $"scene: 1, shot: A, take: 4, to: 70+00, {Kept}, focus: 5ft 6in, mark: good")]
    [InlineData("# only a comment", "")]
    public void A_line_writes_exactly_the_keys_that_it_says(string line, string keys)
    {
        var written = Said.Keys(line);

        Assert.True(
            written == keys || (keys.StartsWith("line/", StringComparison.Ordinal) && written.StartsWith(keys, StringComparison.Ordinal)),
            written
        );
    }

    // As the columns of the log sheet follow each other, but for the mark.
    [Fact]
    public void What_is_written_for_a_take_comes_in_the_order_of_the_log_sheet()
    {
        var said = Said.Line("1A/4 G 13:40 9ft nd6 reading 8 25mm f8 16fps to 70 : soft").Said!;

        Assert.Equal(
            "1A/4 to 70 16fps 25mm f8 reading 8 ND6 9ft G 13:40 soft",
            LineWriter.Write(LineVerb.Take, "R03", said.Keys, Said.Context)
        );
    }

    [Theory]
    [InlineData(
        "load R04 N250-A/3 in B1 by ines 9:15 head 4",
        "roll: R04, lot: N250-A, unit: 3, body: B1, on: 2026-10-04 09:15, by: ines, head: 4+00"
    )]
    [InlineData(
        "load R04 short end of R03 length 38 2026-10-05 9:15 dark 24fps ready all except gate,loops rated 320 practice",
        "roll: R04, short-end-of: R03, length: 38+00, rated: 320, practice: yes, on: 2026-10-05 09:15, light: dark, ready: all, "
            + "except: [gate, loops], speed-after: 24"
    )]
    public void A_roll_is_loaded_in_a_line(string line, string keys) => Assert.Equal(keys, Said.Keys(line));

    [Fact]
    public void On_a_metric_production_a_bare_number_is_in_metres() =>
        Assert.StartsWith(
            "to: 9.5m",
            Said.Keys("run off 9.5", Said.Context with { Units = Shoot.Records.LengthUnit.Metres }),
            StringComparison.Ordinal
        );

    [Fact]
    public void A_take_before_which_there_is_none_has_the_only_lens_of_the_kit()
    {
        var roll = Said.Context.RollNamed("R03")! with { LastTake = [] };
        var context = Said.Context.With(roll) with { Lenses = ["25mm"] };

        Assert.Equal("scene: 1, shot: A, take: 4, to: 70+00, lens: 25mm, mark: good", Said.Keys("1A/4 70 G", context));
        Assert.Equal("lens", Assert.Single(Said.Line("1A/4 70 G", context).Said!.TakenOver));
    }

    [Fact]
    public void A_number_and_four_digits_of_the_line_know_an_entry_again()
    {
        var said = Said.Line("#K3-12   1A/4  70 G").Said!;

        Assert.Equal(("K3-12", "R03", LineVerb.Take), (said.Number, said.Roll, said.Verb));
        // printf '1A/4 70 G' | sha256sum
        Assert.Equal("K3-12/ae98", said.LineKey!.Values[0]);
        Assert.Equal(said.Digest, Said.Line("#K3-12 1A/4 70   G ").Said!.Digest);
        Assert.NotEqual(said.Digest, Said.Line("#K3-12 1A/4 71 G").Said!.Digest);
    }

    [Theory]
    [InlineData("strike 1A/3", "1A/3")]
    [InlineData("strike last", "last")]
    [InlineData("strike scene 1 shot A take 3", "1A/3")]
    [InlineData("amend 1A/3 NG", "1A/3")]
    [InlineData("amend last NG", "last")]
    [InlineData("#K3-12 strike", "by its number")]
    public void An_entry_is_amended_or_struck_by_its_slate_its_number_or_as_the_last(string line, string target)
    {
        var said = Said.Line(line).Said!;

        Assert.Equal(target, said.Target is null ? "by its number" : said.Target.Slate ?? "last");
    }

    [Fact]
    public void A_day_is_the_date_of_the_lines_that_follow()
    {
        var context = Said.Context.After(Said.Line("day 2026-10-09").Said!);

        Assert.Equal("on: 2026-10-09 16:45", Said.Keys("unload 16:45", context));
    }

    [Fact]
    public void A_line_knows_what_the_lines_before_it_said()
    {
        var context = Said.Empty;
        foreach (
            var line in (string[])
                ["load R01 N250-A/1 in B1 9:15", "1A/1 to 10 25mm f8 6ft NG", "next 20 G", "wind", "2A/1 30 f4 no focus H"]
        )
        {
            context = context.After(Said.Line(line, context).Said!);
        }

        Assert.Equal("scene: 1, shot: A, take: 3, to: 40+00, lens: 25mm, stop: 4, mark: good", Said.Keys("1A/next 40 G", context));
        Assert.Empty(context.After(Said.Line("unload 12:00", context).Said!).Open);
    }

    [Theory]
    [InlineData("1A/4 70 f8 G")]
    [InlineData("next 70+12 G")]
    [InlineData("2B/1 to 70 75 G")]
    [InlineData("1A/4 70 9ft NG")]
    public void An_ordinary_take_with_one_thing_changed_costs_at_most_25_keys(string line)
    {
        Assert.NotNull(Said.Line(line).Said);
        // The return key counts too.
        Assert.True(line.Length + 1 <= 25);
    }
}
