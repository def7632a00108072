using System.Text.Json;

namespace Spoolbook.Acceptance.Logging;

/// <summary>What is said on set goes into the record, and every line is answered.</summary>
public sealed class LogCommandTests : IDisposable
{
    const string Load = "load R07 N500-A/2 in B1 by ines 2026-10-04 15:30 dark head 4 24fps loops set plate closed ready all";

    readonly LoggingBench _bench = new();

    public LogCommandTests() => _bench.CopyOf(Repository.Sample);

    public void Dispose() => _bench.Dispose();

    [Fact]
    public void A_roll_that_is_loaded_begins_a_file_and_each_line_says_how_far_it_is()
    {
        Assert.StartsWith("R07 at 4+00 · 96+00 left, 2:40 min at 24 fps\n", Log(Load).Out, StringComparison.Ordinal);
        Log("wind");
        Assert.StartsWith(
            "R07 at 12+00 · 88+00 left, 3:40 min at 16 fps · spring 10+00\n",
            Log("7C/4 to 12 16fps f8 25mm 9ft G 15:40 soft at the end").Out,
            StringComparison.Ordinal
        );
        Assert.StartsWith(
            "R07 at 10+00 · pass 2, exposed to 12+00 · 88+00 left, 3:40 min at 16 fps\n",
            Log("rewind 10 closed zeroed").Out,
            StringComparison.Ordinal
        );

        Assert.Equal(
            """
            # yaml-language-server: $schema=../schemas/roll.schema.json
            spoolbook: 1
            roll: R07
            lot: N500-A
            unit: 2
            body: B1
            load: {on: 2026-10-04 15:30, by: ines, light: dark, head: 4+00, loops: set, plate: closed, ready: all, speed-after: 24}
            log:
              - wind: full
              - take: {scene: 7, shot: C, take: 4, to: 12+00, speed: 16, lens: 25mm, stop: 8, focus: 9ft, mark: good, at: 15:40, note: soft at the end}
              - rewind: {to: 10+00, shutter: closed, counter-zeroed: yes}

            """,
            _bench.Read("rolls/r07.yaml")
        );
    }

    [Fact]
    public void A_line_that_nobody_can_read_is_refused_with_its_place_and_writes_nothing()
    {
        var before = _bench.Read("rolls/r06.yaml");

        var (status, said, error) = _bench.Run("log", "R06: amend 7C/3 25mmm H");

        Assert.Equal(1, status);
        Assert.Contains("^^^^^", said, StringComparison.Ordinal);
        Assert.Equal("Nothing was written: correct the line.\n", error);
        Assert.Equal(before, _bench.Read("rolls/r06.yaml"));
    }

    [Fact]
    public void A_line_that_brings_an_error_is_refused_and_written_only_if_it_happened_anyway()
    {
        Log(Load);

        var (status, said, error) = _bench.Run("log", "7C/4 from 12 to 9 G lens 25mm");
        Assert.Equal(1, status);
        Assert.Contains("[counter/runs-backwards]", said, StringComparison.Ordinal);
        Assert.Equal("Nothing was written: correct the line, or write it nevertheless: --anyway.\n", error);
        Assert.EndsWith("log:\n", _bench.Read("rolls/r07.yaml"), StringComparison.Ordinal);

        Assert.Equal(0, _bench.Run("log", "--anyway", "7C/4 from 12 to 9 G lens 25mm").Status);
        Assert.Contains(
            "take: {scene: 7, shot: C, take: 4, from: 12+00, to: 9+00",
            _bench.Read("rolls/r07.yaml"),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Of_several_lines_all_are_written_or_none()
    {
        var lines = $"{Load}\nwind\n7C/4 to 12 f8 25mm 9ft\n";

        var (status, said, _) = _bench.Piped(lines, "log", "-");
        Assert.Equal(1, status);
        Assert.Contains("-:3:", said, StringComparison.Ordinal);
        Assert.False(File.Exists(Path.Combine(_bench.Production, "rolls", "r07.yaml")));

        Assert.Equal(0, _bench.Piped(lines.Replace("9ft", "9ft G", StringComparison.Ordinal), "log", "-").Status);
        Assert.Contains("take: {scene: 7, shot: C, take: 4", _bench.Read("rolls/r07.yaml"), StringComparison.Ordinal);
    }

    [Fact]
    public void The_last_line_is_taken_back_once_and_a_roll_that_was_loaded_goes_again()
    {
        Log(Load);
        var loaded = _bench.Read("rolls/r07.yaml");
        Log("wind");

        Assert.Equal("Took back 'wind': rolls/r07.yaml as before.\n", _bench.Run("log", "--undo").Out);
        Assert.Equal(loaded, _bench.Read("rolls/r07.yaml"));
        Assert.Equal(1, _bench.Run("log", "--undo").Status);

        File.Delete(Path.Combine(_bench.Production, "rolls", "r07.yaml"));
        Log(Load);
        Assert.Equal(0, _bench.Run("log", "--undo").Status);
        Assert.False(File.Exists(Path.Combine(_bench.Production, "rolls", "r07.yaml")));
    }

    [Fact]
    public void A_dry_run_shows_the_lines_of_the_file_and_writes_none()
    {
        var before = _bench.Read("rolls/r06.yaml");

        var (status, said, _) = _bench.Run("log", "--dry-run", "R06: amend 7C/3 H");

        Assert.Equal(0, status);
        Assert.Contains("-  - take: {scene: 7, shot: C, take: 3, to: 72+04", said, StringComparison.Ordinal);
        Assert.Contains("+  - take: {scene: 7, shot: C, take: 3, to: 72+04", said, StringComparison.Ordinal);
        Assert.EndsWith("Nothing was written (--dry-run).\n", said, StringComparison.Ordinal);
        Assert.Equal(before, _bench.Read("rolls/r06.yaml"));
    }

    [Fact]
    public void A_numbered_line_is_added_once_amended_when_it_says_something_else_and_struck_by_its_number()
    {
        Log(Load);
        Log("#K3-12 7C/4 to 12 f8 25mm 9ft G");
        var once = _bench.Read("rolls/r07.yaml");
        Assert.Matches("mark: good, .*line: K3-12/[0-9a-f]{4}", once);

        Log("#K3-12 7C/4 to 12  f8 25mm 9ft G");
        Assert.Equal(once, _bench.Read("rolls/r07.yaml"));

        Log("7C/5 to 20 NG f4");
        Log("#K3-12 7C/4 to 12+20 25mm 9ft NG");
        Assert.Matches("take: 4, to: 12\\+20, lens: 25mm, .*mark: ng, .*line: K3-12/[0-9a-f]{4}", _bench.Read("rolls/r07.yaml"));

        Log("#K3-12 strike");
        Assert.DoesNotContain("K3-12", _bench.Read("rolls/r07.yaml"), StringComparison.Ordinal);
        Assert.Contains("take: 5", _bench.Read("rolls/r07.yaml"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_program_reads_what_came_of_each_line()
    {
        var (status, said, _) = _bench.Piped($"{Load}\nwind\n", "log", "-", "--format", "json");

        Assert.Equal(0, status);
        using var json = JsonDocument.Parse(said);
        var roll = json.RootElement.GetProperty("lines")[1].GetProperty("roll");
        Assert.Equal(("R07", "4+00", "96+00", "18+00"), (Text("name"), Text("at"), Text("left"), Text("spring")));
        Assert.True(json.RootElement.GetProperty("written").GetBoolean());

        string? Text(string name) => roll.GetProperty(name).GetString();
    }

    [Fact]
    public void Loading_is_asked_for_point_by_point_and_unloading_says_what_to_write_on_the_can()
    {
        var load = "R07\nN500-A/2\n\n2026-10-04 15:30\ndark\n\n\nyes\nyes\nyes\nno\nyes\nyes\n\nno\n";
        var (status, said, error) = _bench.Piped(load, "load");
        Assert.Equal((0, ""), (status, error));
        Assert.Contains(
            "load R07 N500-A/2 by ines 2026-10-04 15:30 dark head 4+00 ready all except slot speed-after 24\n",
            said,
            StringComparison.Ordinal
        );
        Assert.EndsWith("Zero the frame counter and the dial before the first take.\n", said, StringComparison.Ordinal);
        Log("7C/4 to 60 f8 25mm 9ft G 15:40 wound yes");

        (status, said, error) = _bench.Piped("62\nyes\n2026-10-04 16:45\n\ndark\n2\nkept\n\n", "unload");

        Assert.Equal((0, ""), (status, error));
        Assert.Contains("run off 62 capped\n", said, StringComparison.Ordinal);
        Assert.EndsWith(
            """
            On the can:
              HERON/R07/T · Colour negative 500 T, N500-A · ecn-2 · rated 500 · 64+00 of 100+00 exposed · B1
              2026-10-04 · EXPOSED
            On the short end's can:
              R07-SE · Colour negative 500 T, N500-A · 36+00 · 2026-10-04 · UNEXPOSED

            """,
            said.Replace("\n\n", "\n", StringComparison.Ordinal),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void The_boxes_of_the_sheet_are_said_with_the_unload_compared_with_the_log_and_struck_with_it()
    {
        Log(Load);
        Log("7C/4 to 60 f8 25mm 9ft G 15:40 wound yes");
        var before = _bench.Read("rolls/r07.yaml");

        var said = Log("unload 2026-10-04 16:45 dark by ines tail 2 good 55 waste 6 se 38 loaded 100 takes 1").Out;
        Assert.Contains("[length/totals-differ]", said, StringComparison.Ordinal);
        Assert.EndsWith(
            "unload: {on: 2026-10-04 16:45, by: ines, light: dark, tail: 2+00}\n"
                + "totals: {good: 55, waste: 6, short-end: 38, loaded: 100, takes: 1}\n",
            _bench.Read("rolls/r07.yaml"),
            StringComparison.Ordinal
        );

        Log("R07: strike last");
        Assert.Equal(before, _bench.Read("rolls/r07.yaml"));

        said = Log("unload 2026-10-04 16:45 dark by ines tail 2 good 56 waste 6 se 38 loaded 100 takes 1").Out;
        Assert.DoesNotContain("[length/totals-differ]", said, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("2026-10-04 18:00", "16:45", "2026-10-04 16:45", "")]
    [InlineData("2026-10-05 09:00", "00:40", "2026-10-05 00:40", " · on 2026-10-05")]
    [InlineData("2026-10-05 09:00", "08:50", "2026-10-05 08:50", " · on 2026-10-05")]
    [InlineData("2026-11-30 07:45", "16:45", "2026-10-04 16:45", " · on 2026-10-04")]
    [InlineData("2026-11-30 07:45", "00:40", "2026-10-05 00:40", " · on 2026-10-05")]
    public void An_unload_without_a_date_is_of_the_day_of_its_roll_and_the_answer_says_which(
        string now,
        string time,
        string date,
        string said
    )
    {
        Log(Load);
        Log("7C/4 to 60 f8 25mm 9ft G 15:40 wound yes");
        _bench.Now = DateTime.Parse(now, System.Globalization.CultureInfo.InvariantCulture);

        var answer = Log($"unload {time} tail 2").Out.Split('\n')[0];

        Assert.Contains($"unload: {{on: {date}, tail: 2+00}}", _bench.Read("rolls/r07.yaml"), StringComparison.Ordinal);
        Assert.Equal($"R07 is out: 62+00 of 100+00 exposed · 38+00 short end{said}", answer);

        Log("R07: amend last 16:50 good 56");
        Assert.Contains(
            $"unload: {{on: {date[..10]} 16:50, tail: 2+00}}\ntotals: {{good: 56}}",
            _bench.Read("rolls/r07.yaml"),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void An_unload_that_is_refused_leaves_no_run_off_behind()
    {
        Log(Load);
        Log("7C/4 to 60 f8 25mm 9ft G 15:40 wound yes");
        var before = _bench.Read("rolls/r07.yaml");

        var (status, said, error) = _bench.Piped("62\nyes\n2026-10-04 16:45\nnobody at all\ndark\n2\nkept\n\n", "unload");

        Assert.Equal(1, status);
        Assert.Contains("run off 62 capped\n", said, StringComparison.Ordinal);
        Assert.StartsWith("Nothing was written: correct the lines", error, StringComparison.Ordinal);
        Assert.Equal(before, _bench.Read("rolls/r07.yaml"));
    }

    [Fact]
    public void A_run_off_and_the_unload_after_it_are_taken_back_together()
    {
        Log(Load);
        Log("7C/4 to 60 f8 25mm 9ft G 15:40 wound yes");
        var before = _bench.Read("rolls/r07.yaml");
        Assert.Equal(0, _bench.Piped("62\nyes\n2026-10-04 16:45\n\ndark\n2\nkept\n\n", "unload").Status);

        Assert.Equal(0, _bench.Run("log", "--undo").Status);

        Assert.Equal(before, _bench.Read("rolls/r07.yaml"));
    }

    [Fact]
    public void A_remark_is_never_replaced_without_a_word()
    {
        Log(Load);
        Log("7C/4 to 12 f8 25mm 9ft G 15:40 soft at the end");
        var before = _bench.Read("rolls/r07.yaml");

        var (status, said, _) = _bench.Run("log", "amend 7C/4 X");
        Assert.Equal(1, status);
        Assert.Contains("`X` is no mark: there are G, H, NG and T.", said, StringComparison.Ordinal);
        Assert.Equal(before, _bench.Read("rolls/r07.yaml"));

        Assert.StartsWith(
            "7C/4 amended · note was \"soft at the end\" · note is now \"sharp after all\"",
            Log("amend 7C/4 sharp after all").Out,
            StringComparison.Ordinal
        );
        Assert.StartsWith(
            "7C/4 amended · note was \"sharp after all\" · no note now",
            Log("amend 7C/4 note -").Out,
            StringComparison.Ordinal
        );
        Assert.DoesNotContain("note", Log("amend 7C/4 NG").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void The_next_morning_a_take_gets_its_date_and_one_after_midnight_is_still_of_the_night()
    {
        Log(Load);
        _bench.Now = new DateTime(2026, 10, 5, 0, 20, 0);
        Assert.DoesNotContain("· on ", Log("7C/4 to 12 f8 25mm 9ft G 0:15").Out, StringComparison.Ordinal);

        _bench.Now = new DateTime(2026, 10, 5, 9, 20, 0);
        Assert.Contains(" · on 2026-10-05\n", Log("7C/5 to 20 H 9:20").Out, StringComparison.Ordinal);
        Assert.Contains("on: 2026-10-05, at: 09:20", _bench.Read("rolls/r07.yaml"), StringComparison.Ordinal);
    }

    [Fact]
    public void Answers_fit_a_telephone_held_upright()
    {
        Log(Load);
        Log("wind");

        var (_, said, _) = _bench.Piped("7C/4 to 12 16fps f8 25mm 9ft G 15:40\n7C/5 to 42 G\nrewind 20\n", 40, "log");

        Assert.All(said.Split('\n'), line => Assert.True(line.Length <= 40, line));
    }

    [Fact]
    public void Without_a_production_around_the_command_asks_for_one()
    {
        File.Delete(Path.Combine(_bench.Production, "production.yaml"));

        var (status, _, error) = _bench.Run("log", "wind");

        Assert.Equal(2, status);
        Assert.Contains("--in", error, StringComparison.Ordinal);
    }

    (int Status, string Out, string Error) Log(string line)
    {
        var run = _bench.Run("log", line);
        Assert.True(run.Status == 0, $"{line}: {run.Out}{run.Error}");
        return run;
    }
}
