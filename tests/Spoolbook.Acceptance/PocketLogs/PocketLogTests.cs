namespace Spoolbook.Acceptance.PocketLogs;

/// <summary>A day's log on a telephone, as a thumb taps it in.</summary>
public sealed class PocketLogTests(MadeSample sample) : IClassFixture<MadeSample>, IDisposable
{
    readonly Bench _bench = new();

    string Page => sample.PathOf("pocket-log.html");

    public void Dispose() => _bench.Dispose();

    [ToolFact("chromium")]
    public async Task A_day_that_is_tapped_in_is_handed_over_as_lines_of_the_short_form()
    {
        await using var telephone = await Telephone.With(Page);
        await Load(telephone);
        await telephone.Clock("2026-10-05T09:05");
        await telephone.Tap("#b-wound");
        await FirstTake(telephone);
        await telephone.Clock("2026-10-05T09:20");
        await telephone.Tap("#b-choose-filter");
        await telephone.Tap("#choose [data-with=ND3]");
        await telephone.Tap("#choose [data-with=PL]");
        await telephone.Tap("#b-done");
        await telephone.Tap("#b-choose-remark");
        await telephone.Write("#f-remark-take", "Dog in shot:\nagain");
        await telephone.Tap("#b-done");
        await telephone.Pad("20");
        await telephone.Tap("#b-mark-NG");
        await telephone.Tap("#b-go-more");
        await telephone.Tap("#b-form-rewind");
        await telephone.Length("to", "15");
        await telephone.Tap("label:has(#f-zeroed)");
        await telephone.Tap("#b-log");
        await telephone.Tap("#b-go-more");
        await telephone.Tap("#b-form-fog");
        await telephone.Length("before", "1+20");
        await telephone.Length("after", "2");
        await telephone.Tap("#b-log");
        await telephone.Tap("#b-go-more");
        await telephone.Tap("#b-form-note");
        await telephone.Write("#f-remark", "Clouds came in");
        await telephone.Tap("#b-log");
        await telephone.Tap("#b-go-more");
        await telephone.Tap("#b-form-run-off");
        await telephone.Tap("#b-choose-to");
        await telephone.Tap("#choose [data-do=whole]");
        await telephone.Tap("#b-log");
        await telephone.Clock("2026-10-06T08:00");
        await telephone.Tap("#to-roll");
        await telephone.Tap("#b-form-unload");
        await telephone.Length("tail", "2");
        await telephone.Tap("#b-log");

        Assert.Equal(
            """
            day 2026-10-05
            #K3-1 load R07 N250-A/4 body B1 by ines 09:00 light subdued head 4+00 ready all except run-test speed-after 24
            #K3-2 R07: wind at 09:05
            #K3-3 R07: 1B/4 to 14+12 speed 24 lens 25mm stop 8/11 filter - focus 9ft G at 09:10
            #K3-4 R07: 1B/5 to 20+00 speed 24 lens 25mm stop 8/11 filter ND3,PL focus 9ft NG at 09:20 : Dog in shot: again
            #K3-5 R07: rewind to 15+00 shutter closed in camera counter-zeroed at 09:20
            #K3-6 R07: fog before 1+20 after 2+00 at 09:20
            #K3-7 R07: note at 09:20 : Clouds came in
            #K3-8 R07: run-off to 100+00 lens capped at 09:20
            day 2026-10-06
            #K3-9 R07: unload 08:00 by ines light subdued tail 2+00

            """,
            await telephone.Lines()
        );
        Assert.Empty(telephone.Complaints);
    }

    [ToolFact("chromium")]
    public async Task A_remark_on_loading_or_on_taking_out_is_a_note_while_the_roll_is_in_the_camera()
    {
        await using var telephone = await Telephone.With(Page);
        await telephone.Tap("#b-form-load");
        await telephone.Choose("stock", "0");
        await telephone.Write("#f-remark", "Spool bent");
        await telephone.Tap("#b-log");
        await telephone.Tap("#to-roll");
        await telephone.Tap("#b-form-unload");
        await telephone.Write("#f-remark", "Tape the can");
        await telephone.Tap("#b-log");

        Assert.EndsWith(
            """
            #K3-2 R07: note at 09:00 : Spool bent
            #K3-3 R07: note at 09:00 : Tape the can
            #K3-4 R07: unload 09:00 light dark short-end kept

            """,
            await telephone.Lines(),
            StringComparison.Ordinal
        );
    }

    [ToolFact("chromium")]
    public async Task What_the_meter_reads_and_how_long_a_fade_is_are_said_of_one_take_only()
    {
        await using var telephone = await Telephone.With(Page);
        await Load(telephone);
        await telephone.Choose("reading", "5.6");
        await telephone.Tap("#b-go-more");
        await telephone.Length("fadeOut", "1+08");
        await telephone.Tap("#b-back2take");
        await FirstTake(telephone);
        await telephone.Pad("20");
        await telephone.Tap("#b-mark-G");

        var lines = (await telephone.Lines()).Split('\n');
        Assert.Equal(
            "#K3-2 R07: 1B/4 to 14+12 speed 24 lens 25mm stop 8/11 reading 5.6 meter M1 filter - focus 9ft G fade-out 1+08 at 09:10",
            lines[2]
        );
        Assert.Equal("#K3-3 R07: 1B/5 to 20+00 speed 24 lens 25mm stop 8/11 filter - focus 9ft G at 09:10", lines[3]);

        // Corrected, it is as it was typed.
        await telephone.Tap("#to-log");
        await telephone.Tap("#log-body [data-with='2']");
        await telephone.Tap("#b-mark-H");
        Assert.Contains("focus 9ft H fade-out 1+08 at 09:10", await telephone.Lines(), StringComparison.Ordinal);
    }

    [ToolFact("chromium")]
    public async Task An_ordinary_take_costs_at_most_twelve_taps()
    {
        await using var telephone = await Telephone.With(Page);
        await Load(telephone);
        await FirstTake(telephone);

        telephone.Taps = 0;
        await telephone.Tap("#chip-slate");
        await telephone.Tap("#choose [data-do=shot][data-with='3']");
        await telephone.Choose("stop", "5.6");
        await telephone.Pad("22+15");
        await telephone.Tap("#b-mark-H");

        Assert.Contains(
            "1D/4 to 22+15 speed 24 lens 25mm stop 5.6 filter - focus 9ft H",
            await telephone.Lines(),
            StringComparison.Ordinal
        );
        Assert.InRange(telephone.Taps, 1, 12);
    }

    [ToolFact("chromium")]
    public async Task What_is_logged_and_what_is_half_typed_is_there_after_the_page_was_closed_or_killed()
    {
        await using var telephone = await Telephone.With(Page);
        await Load(telephone);
        await FirstTake(telephone);
        await telephone.Pad("2");
        var before = await telephone.Lines();

        await telephone.Reopen();
        Assert.Equal(before, await telephone.Lines());
        await telephone.Crash();
        await telephone.Pad("1");
        await telephone.Tap("#b-mark-G");

        Assert.StartsWith(before, await telephone.Lines(), StringComparison.Ordinal);
        Assert.Contains("#K3-3 R07: 1B/5 to 21+00", await telephone.Lines(), StringComparison.Ordinal);
        Assert.Empty(await telephone.Warning());
    }

    [ToolFact("chromium")]
    public async Task A_full_store_is_warned_of_and_stays_so_and_the_log_can_still_be_handed_over()
    {
        await using var telephone = await Telephone.With(Page);
        await Load(telephone);
        await telephone.Ask(
            """
            for (let n = 1 << 22, i = 0; n >= 1; n >>= 1) {
              for (;;) { try { localStorage.setItem('filler' + i, 'x'.repeat(n)); i++; } catch { break; } }
            }
            """
        );

        await FirstTake(telephone);

        Assert.Contains("does not keep", await telephone.Warning(), StringComparison.Ordinal);
        await telephone.Tap("#over-now");
        Assert.Contains("does not keep", await telephone.Warning(), StringComparison.Ordinal);
        Assert.Contains(
            "1B/4 to 14+12",
            (await telephone.Ask("document.getElementById('over-lines').value")).GetValue<string>(),
            StringComparison.Ordinal
        );
    }

    [ToolTheory("chromium")]
    [InlineData("Object.defineProperty(window, 'localStorage', { get() { throw new DOMException('denied', 'SecurityError'); } });")]
    [InlineData("Storage.prototype.setItem = () => {};")]
    public async Task A_browser_that_keeps_nothing_is_warned_of_before_anything_is_logged(string browser)
    {
        await using var telephone = await Telephone.With(Page, browser);

        Assert.Contains("does not keep", await telephone.Warning(), StringComparison.Ordinal);
        await Load(telephone);
        await FirstTake(telephone);
        Assert.Contains("1B/4 to 14+12", await telephone.Lines(), StringComparison.Ordinal);
    }

    [ToolFact("chromium")]
    public async Task A_log_that_the_browser_lost_is_missed()
    {
        await using var telephone = await Telephone.With(Page);
        await Load(telephone);
        await telephone.Ask("localStorage.clear()");

        // The answer must be out before the page goes that gives it.
        await telephone.Ask("setTimeout(() => location.reload(), 200) > 0");
        await Task.Delay(1500);
        await telephone.Ask("new Promise(done => setTimeout(done, 500)).then(() => true)");

        Assert.Contains("the browser has lost it", await telephone.Warning(), StringComparison.Ordinal);
    }

    [ToolFact("chromium")]
    public async Task A_correction_is_handed_over_under_the_same_number_and_a_struck_entry_as_struck()
    {
        await using var telephone = await Telephone.With(Page);
        await Load(telephone);
        await FirstTake(telephone);
        await telephone.Pad("20");
        await telephone.Tap("#b-mark-G");

        await telephone.Tap("#to-log");
        await telephone.Tap("#log-body [data-with='2']");
        await telephone.Choose("stop", "8");
        await telephone.Pad("15");
        await telephone.Tap("#b-mark-H");
        await telephone.Tap("#log-body [data-with='3']");
        await telephone.Tap("#take [data-do=strike]");
        Assert.DoesNotContain("#K3-3 strike", await telephone.Lines(), StringComparison.Ordinal);
        await telephone.Tap("#take [data-do=strike]");

        Assert.Contains(
            "#K3-2 R07: 1B/4 to 15+00 speed 24 lens 25mm stop 8 filter - focus 9ft H at 09:10\n#K3-3 strike\n",
            await telephone.Lines(),
            StringComparison.Ordinal
        );
        // The load was the first entry: what is logged on its roll would hang in the air.
        await telephone.Tap("#log-body [data-with='1']");
        await telephone.Tap("#form [data-do=strike]");
        Assert.Contains("Strike the log of R07 first", await telephone.Answer(), StringComparison.Ordinal);
    }

    [ToolFact("chromium")]
    public async Task A_roll_that_stays_in_the_camera_overnight_says_the_new_day_and_a_night_says_none()
    {
        await using var telephone = await Telephone.With(Page);
        await Load(telephone);
        await FirstTake(telephone);
        await telephone.Clock("2026-10-06T00:30");
        await telephone.Pad("20");
        await telephone.Tap("#b-mark-G");
        await telephone.Clock("2026-10-06T14:00");
        await telephone.Tap("#b-wound");
        await telephone.Pad("30");
        await telephone.Tap("#b-mark-G");
        await telephone.Clock("2026-10-07T09:00");
        await telephone.Pad("40");
        await telephone.Tap("#b-mark-G");

        var lines = (await telephone.Lines()).Split('\n')[4..];
        Assert.Equal("#K3-3 R07: 1B/5 to 20+00 speed 24 lens 25mm stop 8/11 filter - focus 9ft G at 00:30", lines[0]);
        Assert.Equal("#K3-4 R07: wind day 2026-10-06 at 14:00", lines[1]);
        Assert.EndsWith(" G at 14:00", lines[2], StringComparison.Ordinal);
        Assert.Equal("day 2026-10-07", lines[3]);
        Assert.EndsWith(" G on 2026-10-07 at 09:00", lines[4], StringComparison.Ordinal);
    }

    [ToolFact("chromium")]
    public async Task Each_piece_of_a_short_end_is_chosen_by_the_name_on_its_can()
    {
        var production = _bench.CopyOf(Path.Combine(TestFolders.Clean, "lent-and-shared"));
        var rolls = Path.Combine(production, "rolls");
        File.Delete(Path.Combine(rolls, "r3.yaml"));
        _bench.Run("make", production, "--draft", "--out", "papers");
        await using var telephone = await Telephone.With(_bench.PathOf("papers/pocket-log.html"));
        await telephone.Tap("#b-form-load");
        await telephone.Tap("#b-choose-stock");
        var cans = await telephone.Text("#choose");
        Assert.Contains("R1-SE1", cans, StringComparison.Ordinal);
        Assert.Contains("R1-SE3", cans, StringComparison.Ordinal);

        // Once a piece is loaded, the others are still there.
        var second = (await telephone.Ask("String(Page.data.stock.findIndex(s => s.name === 'R1-SE3'))")).GetValue<string>();
        await telephone.Tap($"#choose [data-do=pick][data-with='{second}']");
        Assert.Contains("R1-SE3", await telephone.Text("#b-choose-stock"), StringComparison.Ordinal);
        Assert.Equal(
            "R1-SE1",
            (
                await telephone.Ask(
                    "Store.state.entries.push({ ...Store.state.form }), Store.state.form = null, "
                        + "Page.cans().filter(([, , , can]) => can.shortEndOf).map(([, name]) => name).join()"
                )
            ).GetValue<string>()
        );
    }

    [ToolFact("chromium")]
    public async Task A_roll_that_the_record_has_in_a_camera_goes_on_where_it_was()
    {
        var production = _bench.CopyOf(Repository.Sample);
        var sheet = Path.Combine(production, "rolls", "r04.yaml");
        var lines = await File.ReadAllLinesAsync(sheet);
        await File.WriteAllLinesAsync(sheet, lines.Where(line => !line.StartsWith("unload", StringComparison.Ordinal)));
        // Other rolls went into the only body after it, which is an error; here only where the roll is matters.
        _bench.Run("make", production, "--draft", "--out", "papers");
        await using var telephone = await Telephone.With(_bench.PathOf("papers/pocket-log.html"));

        Assert.Contains("93+18", await telephone.Text("#take-film"), StringComparison.Ordinal);
        await telephone.Pad("95");
        await telephone.Tap("#b-mark-G");
        Assert.Equal(
            "#K3-1 R04: 4B/3 to 95+00 speed 24 lens 75mm stop 4 filter - focus inf G on 2026-10-05 at 09:00",
            (await telephone.Lines()).Split('\n')[1]
        );
    }

    [ToolFact("chromium")]
    public async Task Only_two_taps_clear_the_telephone_and_no_number_is_given_twice()
    {
        await using var telephone = await Telephone.With(Page);
        await Load(telephone);
        await telephone.Tap("#to-over");
        await telephone.Tap("#b-clear");
        Assert.Contains("#K3-1", await telephone.Lines(), StringComparison.Ordinal);
        await telephone.Tap("#b-keepit");
        Assert.Contains("#K3-1", await telephone.Lines(), StringComparison.Ordinal);
        await telephone.Tap("#b-clear");
        await telephone.Tap("#b-clearall");
        Assert.Empty(await telephone.Lines());

        await telephone.Tap("#to-roll");
        await Load(telephone);
        Assert.Contains("#K3-2 load", await telephone.Lines(), StringComparison.Ordinal);
    }

    [ToolFact("chromium")]
    public async Task A_take_that_ends_behind_where_the_film_was_is_logged_only_at_a_second_tap()
    {
        await using var telephone = await Telephone.With(Page);
        await Load(telephone);
        await FirstTake(telephone);
        await telephone.Pad("12");
        await telephone.Tap("#b-mark-G");

        Assert.Contains("the film was at 14+12 ft already", await telephone.Answer(), StringComparison.Ordinal);
        Assert.DoesNotContain("to 12+00", await telephone.Lines(), StringComparison.Ordinal);
        await telephone.Tap("#b-mark-G");
        Assert.Contains("1B/5 to 12+00", await telephone.Lines(), StringComparison.Ordinal);
    }

    [ToolFact("chromium")]
    public async Task What_hurts_film_is_said_where_it_is_done()
    {
        await using var telephone = await Telephone.With(Page);
        await telephone.Tap("#b-form-load");
        Assert.Contains("subdued light", await telephone.Text("#form-cautions"), StringComparison.Ordinal);
        await telephone.Tap("label:has(#f-light-bright)");
        Assert.Contains("Not in bright light", await telephone.Text("#form-cautions"), StringComparison.Ordinal);
        await telephone.Tap("#b-leave");
        await Load(telephone);

        // 96 ft are left: the door may open in the dark only.
        await telephone.Tap("#to-roll");
        await telephone.Tap("#b-form-unload");
        Assert.Contains("Total darkness", await telephone.Text("#form-cautions"), StringComparison.Ordinal);
        await telephone.Tap("label:has(#f-light-subdued)");
        Assert.Contains("it is fogged", await telephone.Text("#form-cautions"), StringComparison.Ordinal);
    }

    [ToolFact("chromium")]
    public async Task A_cartridge_is_warned_of_its_gate_and_not_of_the_turns_of_a_spool()
    {
        var production = _bench.CopyOf(Repository.Sample);
        var file = Path.Combine(production, "production.yaml");
        File.WriteAllText(file, File.ReadAllText(file).Replace("gauge: 16mm", "gauge: super8", StringComparison.Ordinal));
        _bench.Run("make", production, "--draft", "--only", "pocket-log", "--out", "papers");

        await using var telephone = await Telephone.With(_bench.PathOf("papers/pocket-log.html"));
        await telephone.Tap("#b-form-load");
        await telephone.Tap("label:has(#f-light-bright)");
        Assert.Contains("push the cartridge home", await telephone.Text("#form-cautions"), StringComparison.Ordinal);
        await telephone.Tap("#b-leave");
        await Load(telephone);
        await telephone.Tap("#to-roll");
        await telephone.Tap("#b-form-unload");
        Assert.Contains("the rest of it is safe", await telephone.Text("#form-cautions"), StringComparison.Ordinal);
    }

    [ToolFact("chromium")]
    public async Task No_request_leaves_the_telephone_and_a_saved_file_has_the_lines()
    {
        await using var telephone = await Telephone.With(Page);
        await telephone.SaveTo(_bench.Folder);
        await Load(telephone);
        await FirstTake(telephone);
        await telephone.Tap("#to-over");
        await telephone.Tap("#b-copy");
        await telephone.Tap("#b-save");
        var file = _bench.PathOf("HERON-K3-2026-10-05.txt");
        for (var tries = 0; !File.Exists(file) && tries < 100; tries++)
        {
            await telephone.Ask("new Promise(done => setTimeout(done, 50)).then(() => true)");
        }

        Assert.Equal(await telephone.Lines(), await File.ReadAllTextAsync(file));
        Assert.Contains("Last handed over on 2026-10-05", await telephone.Text("#over-clear"), StringComparison.Ordinal);
        Assert.All(telephone.Requests, address => Assert.Matches("^(file|blob|data):", address));
        Assert.Empty(telephone.Complaints);
    }

    [Fact]
    public void The_page_may_fetch_nothing_and_run_only_its_own_script()
    {
        var page = File.ReadAllText(Page);
        Assert.Matches(
            "content=\"default-src 'none'; style-src 'sha256-[^']+'; script-src 'sha256-[^']+'; base-uri 'none'; form-action 'none'\"",
            page
        );
        Assert.DoesNotMatch("https?://|eval\\(|innerHTML|insertAdjacentHTML|document\\.write", page);
    }

    [Fact]
    public void The_index_and_the_log_sheet_lead_to_it() =>
        Assert.All((string[])["index", "log-sheets"], page =>
            Assert.Contains("href=\"pocket-log.html\"", File.ReadAllText(sample.PathOf(page + ".html")), StringComparison.Ordinal)
        );

    /// <summary>Loads R07 with N250-A/4; the run test was not heard.</summary>
    static async Task Load(Telephone telephone)
    {
        await telephone.Tap("#b-form-load");
        await telephone.Choose("stock", "0");
        await telephone.Choose("by", "ines");
        foreach (var point in (string[])["gate", "loops", "plate", "slot", "cut-off"])
        {
            await telephone.Tap($"label:has(#f-ready-{point})");
        }

        await telephone.Length("head", "4");
        await telephone.Tap("#b-log");
    }

    /// <summary>1B/4 to 14+12 on the 25mm, at 09:10.</summary>
    static async Task FirstTake(Telephone telephone)
    {
        await telephone.Clock("2026-10-05T09:10");
        await telephone.Tap("#b-nextshot");
        await telephone.Choose("lens", "25mm");
        await telephone.Choose("stop", "8/11");
        await telephone.Tap("#b-choose-focus");
        await telephone.Pad("9");
        await telephone.Tap("#b-done");
        await telephone.Pad("14+12");
        await telephone.Tap("#b-mark-G");
    }
}
