using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;

namespace Spoolbook.Acceptance;

/// <summary>What a lab's intake looks for on the order, on the cans and on the reports before it opens anything.</summary>
public sealed partial class LabIntakeTests : IDisposable
{
    readonly Bench _bench = new();

    public void Dispose() => _bench.Dispose();

    [Fact]
    public void X_rayed_film_says_so_on_the_order_on_its_can_and_on_its_report()
    {
        var production = _bench.CopyOf(Repository.Sample);
        Edit(
            Path.Combine(production, "stock.yaml"),
            "stock-log:\n",
            "stock-log:\n  - x-rayed: {lot: N250-A, units: [2], on: 2026-10-01, passes: 2}\n"
        );
        Make(production);

        // R02 is of that unit, and R05 of its short end.
        var order = Words("lab-order");
        Assert.Equal(2, Regex.Count(order, "X-rayed 2×: more grain, less contrast"));
        Assert.Equal(2, Regex.Count(Words("can-labels"), "X-RAYED 2×"));
        Assert.Contains("X-rayed 2×", Words("camera-report-R02"), StringComparison.Ordinal);
        Assert.Contains("X-rayed 2×", Words("camera-report-R05"), StringComparison.Ordinal);
        Assert.DoesNotContain("X-rayed", Words("camera-report-R01"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("en", "Still in the camera: figures are not final until it is unloaded.", "Exposed so far", "Not shot yet", "Short end")]
    [InlineData("de", "Noch in der Kamera: Zahlen erst nach dem Entladen endgültig.", "Bisher belichtet", "Noch unbelichtet", "Restrolle")]
    public void A_roll_that_is_still_in_the_camera_says_on_its_report_that_its_figures_will_change(
        string language,
        string says,
        string exposed,
        string rest,
        string shortEnd
    )
    {
        MakeWithR04InTheCamera(language);
        var report = Words("camera-report-R04");

        Assert.Contains(says, report, StringComparison.Ordinal);
        Assert.Contains(exposed, report, StringComparison.Ordinal);
        Assert.Contains(rest, report, StringComparison.Ordinal);
        Assert.DoesNotContain(shortEnd, report, StringComparison.Ordinal);
        Assert.DoesNotContain(says, Words("camera-report-R02"), StringComparison.Ordinal);
        Assert.Contains(shortEnd, Words("camera-report-R02"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("en", "Not final: R04 still in the camera, and not on this order.")]
    [InlineData("de", "Noch nicht endgültig: R04 noch in der Kamera und nicht in diesem Auftrag.")]
    public void An_order_says_at_its_top_which_rolls_are_still_in_the_camera(string language, string says)
    {
        MakeWithR04InTheCamera(language);
        Assert.Contains(says, Words("lab-order").Split("R03")[0], StringComparison.Ordinal);

        Make(_bench.CopyOf(Repository.Sample, "unloaded"));
        Assert.DoesNotContain("Not final", Words("lab-order"), StringComparison.Ordinal);
    }

    void MakeWithR04InTheCamera(string language)
    {
        var production = _bench.CopyOf(Repository.Sample, language);
        Edit(Path.Combine(production, "production.yaml"), "language: en", "language: " + language);
        var roll = Path.Combine(production, "rolls", "r04.yaml");
        File.WriteAllText(roll, Regex.Replace(File.ReadAllText(roll), "^unload:.*\n", "", RegexOptions.Multiline));
        Bench.LeaveOutOfTheBox(production, "R04");
        _bench.Run("make", production, "--draft", "--out", "papers");
    }

    [Fact]
    public void What_costs_most_to_miss_is_first_among_the_exceptions()
    {
        // By common practice of an intake: the bath, the push, what not to correct, fog, the rest.
        Make(_bench.CopyOf(Repository.Sample));
        var page = File.ReadAllText(_bench.PathOf("papers/lab-order.html"));

        Assert.Equal(["R03", "R04", "R06", "R02", "R05", "R01"], Line().Matches(page).Select(m => m.Groups[2].Value));
    }

    [Fact]
    public void What_the_exceptions_are_for_is_said_above_them_with_their_rolls()
    {
        Make(_bench.CopyOf(Repository.Sample));

        Assert.Contains(
            "B&W REVERSAL R03 · Push +1 R04 · Do not correct R03, R06 · Fogged R06 · Notes R02–R06",
            Words("lab-order"),
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData("en", "a4", "Chain of custody: 6 cans, 495+18 ft", "Received by the lab")]
    [InlineData("en", "letter", "Chain of custody: 6 cans, 495+18 ft", "Received by the lab")]
    [InlineData("de", "a4", "Übergabenachweis: 6 Dosen, 495+18 ft", "Vom Kopierwerk übernommen")]
    public void The_lab_signs_for_the_cans_on_the_first_page(string language, string paper, string cans, string signs)
    {
        var production = _bench.CopyOf(Repository.Sample);
        Edit(Path.Combine(production, "production.yaml"), "paper: a4", "paper: " + paper);
        Edit(Path.Combine(production, "production.yaml"), "language: en", "language: " + language);
        Make(production);
        var first = Pages.TextOf(_bench.PathOf("papers/lab-order.pdf"))[0];

        Assert.Contains(cans, first, StringComparison.Ordinal);
        Assert.Contains(signs, first, StringComparison.Ordinal);
    }

    // A lost loop tears perforations, and a roll that was threaded twice has a creased stretch in its middle (common practice).
    [Fact]
    public void What_was_done_to_the_film_itself_is_on_the_order_with_its_place()
    {
        Make(_bench.CopyOf(Repository.Sample));
        var order = Words("lab-order");

        Assert.Contains("at 59+04: Lost the lower loop.", order, StringComparison.Ordinal);
        Assert.Contains("Expect: unloaded and rethreaded at 38+28", order, StringComparison.Ordinal);
    }

    // Whoever winds a roll that is tail out measures from the wrong end, unless the papers say from which.
    [Fact]
    public void Positions_say_from_which_end_they_count_and_cans_which_end_is_outside()
    {
        Make(_bench.CopyOf(Repository.Sample));

        Assert.Contains("Positions from the head.", Words("lab-order"), StringComparison.Ordinal);
        Assert.Contains("Positions from the head.", Words("camera-report-R06"), StringComparison.Ordinal);
        Assert.Equal(6, Regex.Count(Words("can-labels"), "TAIL OUT"));
    }

    [Fact]
    public void A_roll_of_two_days_has_the_second_day_before_its_first_take()
    {
        Make(_bench.CopyOf(Repository.Sample));

        Assert.Matches("Sun 4 Oct 2026 6 5D/1", Words("camera-report-R03"));
        Assert.DoesNotMatch(@"Sun 4 Oct 2026 \d+ \w+/\d", Words("camera-report-R06"));
    }

    [Fact]
    public void Colour_stock_without_a_balance_is_not_called_black_and_white()
    {
        var production = _bench.CopyOf(Repository.Sample);
        var stock = Path.Combine(production, "stock.yaml");
        File.WriteAllText(stock, File.ReadAllText(stock).Replace("balance: daylight", "balance: none", StringComparison.Ordinal));
        _bench.Run("make", production, "--out", "papers", "--draft");

        Assert.Contains("250 / 250", Words("camera-report-R01"), StringComparison.Ordinal);
        Assert.DoesNotContain("black and white", Words("camera-report-R01"), StringComparison.Ordinal);
        Assert.Contains("200 black and white / 200", Words("camera-report-R03"), StringComparison.Ordinal);
    }

    // Film that ran through a camera is tail out (common practice).
    [Fact]
    public void A_roll_that_was_taken_out_rewound_is_head_out_on_the_order_on_its_can_and_on_its_report()
    {
        var production = _bench.CopyOf(Repository.Sample);
        Edit(Path.Combine(production, "rolls", "r05.yaml"), "\nunload:", "\n  - rewind: {to: 4+00, shutter: closed, in: dark}\nunload:");
        _bench.Run("make", production, "--out", "papers", "--draft");

        Assert.Contains("Tail out, unless the can says HEAD OUT.", Words("lab-order"), StringComparison.Ordinal);
        Assert.Contains("Head out R05", Words("lab-order"), StringComparison.Ordinal);
        Assert.Contains("head out: rewound to 4+00 before it was unloaded", Words("lab-order"), StringComparison.Ordinal);
        Assert.Single(Regex.Matches(Words("can-labels"), "HEAD OUT"));
        Assert.Contains("HEAD OUT", Words("camera-report-R05"), StringComparison.Ordinal);
        Assert.DoesNotContain("HEAD OUT", Words("camera-report-R06"), StringComparison.Ordinal);
    }

    // An editor looks for what is good; a circle means to a lab that only these takes are wanted, and all are scanned here.
    [Fact]
    public void A_good_take_has_a_bar_beside_it_on_the_report_and_no_other_has()
    {
        Make(_bench.CopyOf(Repository.Sample));
        var rows = TakeRow().Matches(File.ReadAllText(_bench.PathOf("papers/camera-report-R01.html")));

        Assert.Equal(13, rows.Count);
        Assert.All(rows, row =>
            Assert.Equal(row.Value.Contains("<strong>G</strong>", StringComparison.Ordinal), row.Groups["bar"].Success)
        );
        Assert.Equal(4, rows.Count(row => row.Groups["bar"].Success));
    }

    [Fact]
    public void A_can_whose_rest_was_cut_off_and_nothing_else_is_routine()
    {
        var production = _bench.CopyOf(Repository.Sample);
        Edit(
            Path.Combine(production, "rolls", "r02.yaml"),
            ", notes: \"Cut in the bag at 61 ft: no run-off on this one, the last take is near the end\"",
            ""
        );
        Make(production);
        var routine = File.ReadAllText(_bench.PathOf("papers/lab-order.html")).Split("Routine cans")[1];

        Assert.Contains("HERON/R02/4", routine, StringComparison.Ordinal);
        Assert.Matches(@"61\+12<br\s*/?><span class=""muted"">cut from 100\+00", routine);
    }

    [Fact]
    public void A_can_in_another_bath_is_an_exception_though_nothing_else_is_said_of_it()
    {
        var production = _bench.CopyOf(Repository.Sample);
        Edit(Path.Combine(production, "rolls", "r01.yaml"), "lab: {process: ecn-2, push: 0", "lab: {process: bw-negative, push: 0");
        _bench.Run("make", production, "--out", "papers", "--draft");
        var page = File.ReadAllText(_bench.PathOf("papers/lab-order.html"));

        Assert.Equal(["R03", "R01"], Line().Matches(page).Select(m => m.Groups[2].Value).Take(2));
        Assert.Contains("<span class=\"inverse nowrap\">B&amp;W NEGATIVE</span>", page, StringComparison.Ordinal);
    }

    [Fact]
    public void What_was_agreed_for_a_roll_or_a_process_is_in_the_row_of_its_can()
    {
        Make(_bench.CopyOf(Repository.Sample));
        var exceptions = File.ReadAllText(_bench.PathOf("papers/lab-order.html")).Split("Routine cans")[0];

        Assert.Contains("Agreed:</strong> Reversal runs on Thursdays only.", Row(exceptions, "HERON/R03"), StringComparison.Ordinal);
        Assert.Contains("Agreed:</strong> Oona will hand-inspect R06", Row(exceptions, "HERON/R06"), StringComparison.Ordinal);
        Assert.DoesNotContain("Agreed:", Row(exceptions, "HERON/R04"), StringComparison.Ordinal);
    }

    [Fact]
    public void What_was_agreed_for_one_roll_is_in_no_other_row_whatever_else_it_names()
    {
        var production = _bench.CopyOf(Repository.Sample);
        Edit(
            Path.Combine(production, "production.yaml"),
            "Oona will hand-inspect R06 before",
            "Oona will hand-inspect R06, ECN-2 of N250-A, before"
        );
        Make(production);
        var exceptions = File.ReadAllText(_bench.PathOf("papers/lab-order.html")).Split("Routine cans")[0];

        Assert.Contains("Agreed:</strong> Oona will hand-inspect R06, ECN-2", Row(exceptions, "HERON/R06"), StringComparison.Ordinal);
        Assert.Single(exceptions.Split("<tr>"), row => row.Contains("hand-inspect", StringComparison.Ordinal));
    }

    static string Row(string table, string code) => table.Split("<tr>").Single(row => row.Contains(code, StringComparison.Ordinal));

    [Fact]
    public void A_can_with_a_receipt_still_has_cells_to_sign()
    {
        Make(_bench.CopyOf(Repository.Sample));
        var page = File.ReadAllText(_bench.PathOf("papers/lab-order.html"));

        Assert.Matches(@"Received by the lab<br\s*/?><span[^>]*>Receipt: Signed for by Oona</span></th>(<td[^>]*></td>){4}", page);
    }

    [Fact]
    public void A_note_to_the_lab_is_marked_and_in_the_row_of_its_can()
    {
        Make(_bench.CopyOf(Repository.Sample));
        var page = File.ReadAllText(_bench.PathOf("papers/lab-order.html"));

        Assert.Contains("<span class=\"tag\">NOTE</span> Short end on a 100 ft spool.", page, StringComparison.Ordinal);
    }

    [Fact]
    public void X_rays_that_the_production_accepted_ask_for_no_call()
    {
        var production = _bench.CopyOf(Repository.Sample);
        Edit(
            Path.Combine(production, "stock.yaml"),
            "stock-log:\n",
            "stock-log:\n  - x-rayed: {lot: N250-A, units: [2], on: 2026-10-01, passes: 2}\n"
        );
        File.AppendAllText(
            Path.Combine(production, "production.yaml"),
            "\naccept:\n  - {check: stock/x-rayed, lot: N250-A, reason: A clip test came back clean, by: ines}\n"
        );
        Make(production);

        var order = File.ReadAllText(_bench.PathOf("papers/lab-order.html"));
        Assert.Equal(2, Regex.Count(order, "X-rayed 2×; accepted by production: A clip test came back clean"));
        Assert.DoesNotContain("call about a clip test", Words("camera-report-R02"), StringComparison.Ordinal);
    }

    [Fact]
    public void The_gigabytes_of_the_cans_add_up_to_those_of_the_order()
    {
        Make(Path.Combine(TestFolders.Clean, "lent-and-shared"));
        var sizes = Gigabytes()
            .Matches(Words("lab-order"))
            .Select(m => decimal.Parse(m.Groups[1].Value, CultureInfo.InvariantCulture))
            .ToList();

        Assert.Equal(sizes[^1], sizes.SkipLast(1).Sum());
    }

    [Fact]
    public void A_push_by_the_part_names_the_rule_and_what_it_is_on()
    {
        Make(_bench.CopyOf(Repository.Sample));

        Assert.Contains("R04 1 stop +25 % a stop on 30.54 7.64", Words("lab-order"), StringComparison.Ordinal);
    }

    [Fact]
    public void In_metres_a_take_is_as_long_as_the_difference_of_its_ends()
    {
        Make(Path.Combine(TestFolders.Clean, "metric-35mm-25"));
        foreach (var roll in new[] { "A1", "A2" })
        {
            var takes = Take().Matches(Words("camera-report-" + roll));
            Assert.NotEmpty(takes);
            Assert.All(takes, take =>
            {
                var (from, to, length) = (Metres(take, 1), Metres(take, 2), Metres(take, 3));
                Assert.Equal(to - from, length);
            });
        }

        static decimal Metres(Match take, int group) => decimal.Parse(take.Groups[group].Value, CultureInfo.InvariantCulture);
    }

    [Fact]
    public void X_rays_are_in_the_ledger()
    {
        Make(Path.Combine(TestFolders.Clean, "lent-and-shared"));
        using var ledger = JsonDocument.Parse(File.ReadAllText(_bench.PathOf("papers/ledger.json")));
        var rolls = ledger.RootElement.GetProperty("rolls").EnumerateArray();

        // R1 is of unit 1, which went through once; R3 is of a piece of its short end, which went through once more.
        Assert.Equal(
            [("R1", 1), ("R2", 0), ("R3", 2), ("R4", 0)],
            rolls.Select(r => (r.GetProperty("roll").GetString(), r.GetProperty("x-rayed").GetInt32()))
        );
    }

    [Fact]
    public void A_receipt_on_the_order_leaves_no_empty_line_for_one()
    {
        Make(_bench.CopyOf(Repository.Sample));

        Assert.Matches("Received by the lab Receipt: Signed for by Oona", Words("lab-order"));
        Assert.Single(Regex.Matches(Words("lab-order"), "Signed for by Oona"));
    }

    [Fact]
    public void What_to_deliver_is_missed_on_the_first_page_however_many_cans_there_are()
    {
        var production = _bench.CopyOf(Path.Combine(TestFolders.Clean, "forty-rolls"));
        Make(production);

        Assert.Contains("MISSING: what to deliver", Pages.TextOf(_bench.PathOf("papers/lab-order.pdf"))[0], StringComparison.Ordinal);
    }

    [Fact]
    public void A_line_of_the_order_has_the_number_that_its_can_has_on_the_label()
    {
        Make(_bench.CopyOf(Repository.Sample));
        var page = File.ReadAllText(_bench.PathOf("papers/lab-order.html"));
        var onOrder = Line().Matches(page).Select(m => (m.Groups[2].Value, m.Groups[1].Value)).Order();
        var labels = File.ReadAllText(_bench.PathOf("papers/can-labels.html"));
        var onLabels = Label().Matches(labels).Select(m => (m.Groups[1].Value, m.Groups[2].Value)).Order();

        Assert.Equal(6, onOrder.Count());
        Assert.Equal(onLabels, onOrder);
    }

    [Theory]
    [InlineData("en", "MISSING: what to deliver. Call before scanning.")]
    [InlineData("de", "FEHLT: was zu liefern ist. Vor dem Abtasten anrufen.")]
    public void A_scan_without_a_word_on_what_to_deliver_says_to_call(string language, string said)
    {
        var production = _bench.CopyOf(Repository.Sample);
        var file = Path.Combine(production, "production.yaml");
        Edit(file, "language: en", $"language: {language}");
        File.WriteAllText(file, Deliver().Replace(File.ReadAllText(file), ""));
        Make(production);

        Assert.Contains(said, Words("lab-order"), StringComparison.Ordinal);
    }

    [Fact]
    public void Reversal_stands_out_on_the_report_as_on_the_can()
    {
        Make(_bench.CopyOf(Repository.Sample));

        Assert.Contains(
            "<span class=\"inverse\">B&amp;W REVERSAL</span>",
            File.ReadAllText(_bench.PathOf("papers/camera-report-R03.html")),
            StringComparison.Ordinal
        );
    }

    void Make(string production) => Assert.Equal(0, _bench.Run("make", production, "--out", "papers").Status);

    string Words(string paper) => string.Join(' ', Pages.TextOf(_bench.PathOf($"papers/{paper}.pdf")));

    static void Edit(string file, string from, string to)
    {
        var text = File.ReadAllText(file);
        Assert.Contains(from, text, StringComparison.Ordinal);
        File.WriteAllText(file, text.Replace(from, to, StringComparison.Ordinal));
    }

    [GeneratedRegex(@"<tr id=""take-\d+""(?<bar> class=""flag"")?.*?</tr>", RegexOptions.Singleline)]
    private static partial Regex TakeRow();

    [GeneratedRegex(@"(\d+\.\d)\sGB")]
    private static partial Regex Gigabytes();

    [GeneratedRegex(@"\b(?:G|H|NG|T) (\d+\.\d\d) (\d+\.\d\d) (\d+\.\d\d) ")]
    private static partial Regex Take();

    [GeneratedRegex(@"<td[^>]*>(\d)</td><th scope=""row"".*?HERON/(R\d\d)/", RegexOptions.Singleline)]
    private static partial Regex Line();

    [GeneratedRegex(@"HERON/(R\d\d)/\w · Can (\d) of 6")]
    private static partial Regex Label();

    [GeneratedRegex(@"(?m)^  deliver:[^\n]*\n(?:    [^\n]*\n)*")]
    private static partial Regex Deliver();
}
