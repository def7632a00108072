using System.Diagnostics;
using System.Globalization;
using System.Text.RegularExpressions;

namespace Spoolbook.Acceptance;

/// <summary>Papers in the production's language and units, made on any machine.</summary>
public sealed partial class LanguageTests : IDisposable
{
    readonly Bench _bench = new();

    public void Dispose() => _bench.Dispose();

    [Fact]
    public void The_sample_in_German_is_German_in_its_words_dates_and_decimals()
    {
        var (status, printed, _) = _bench.Run("make", German(), "--out", "papers");

        Assert.Equal(0, status);
        Assert.DoesNotContain("there is no words file", printed, StringComparison.OrdinalIgnoreCase);
        var report = string.Join(' ', Pages.TextOf(_bench.PathOf("papers/camera-report-R01.pdf")));
        Assert.Contains("Kamerabericht", report, StringComparison.Ordinal);
        Assert.Contains("Fr, 2. Okt. 2026", report, StringComparison.Ordinal);
        Assert.Matches(@"Seite 1 von \d", report);
        Assert.Matches(@" 1\d,\d 24 ", report);
        Assert.Contains(
            "Kopierwerksauftrag",
            string.Join(' ', Pages.TextOf(_bench.PathOf("papers/lab-order.pdf"))),
            StringComparison.Ordinal
        );
        Assert.All(Directory.GetFiles(_bench.PathOf("papers"), "*.html"), page =>
            Assert.Contains("<html lang=\"de\">", File.ReadAllText(page), StringComparison.Ordinal)
        );
        Assert.Contains("{slate} bis {to}, {mark}.", File.ReadAllText(_bench.PathOf("papers/pocket-log.html")), StringComparison.Ordinal);
        var summary = string.Join(' ', Pages.TextOf(_bench.PathOf("papers/wrap-summary.pdf")));
        Assert.Contains("Einstellung 7C ist 3-mal gedreht, ohne Kopierer", summary, StringComparison.Ordinal);
        Assert.Contains("Belichtung, 11 Takes: keine Messung", summary, StringComparison.Ordinal);
        // The production's own text stays as it is; the words of the papers do not.
        Assert.All((string[])["camera-report-R01", "camera-report-R03", "can-labels", "exposure-card-B1"], paper =>
            Assert.DoesNotMatch(LeftoverEnglish(), string.Join(' ', Pages.TextOf(_bench.PathOf($"papers/{paper}.pdf"))))
        );
    }

    [Fact]
    public void Services_that_everybody_knows_are_asked_for_in_German_and_a_lab_s_own_as_the_lab_calls_it()
    {
        var production = German();
        var file = Path.Combine(production, "production.yaml");
        File.WriteAllText(
            file,
            File.ReadAllText(file).Replace("services: [prep, scan]", "services: [prep, scan, rem-jet check]", StringComparison.Ordinal)
        );

        _bench.Run("make", production, "--out", "papers");

        var order = PageText.Of(_bench.PathOf("papers/lab-order.html"));
        Assert.Contains("Vorbereitung, Abtastung, rem-jet check", order, StringComparison.Ordinal);
        Assert.DoesNotMatch(@"\b(prep|scan|workprint)\b", order);
    }

    [Fact]
    public void A_language_with_a_region_is_the_language_and_a_missing_one_is_flagged()
    {
        Assert.DoesNotContain(
            "There is no words file",
            _bench.Run("make", German("de-AT"), "--out", "papers").Out,
            StringComparison.Ordinal
        );
        Assert.Contains("Kamerabericht", File.ReadAllText(_bench.PathOf("papers/camera-report-R01.html")), StringComparison.Ordinal);

        var production = _bench.CopyOf(Repository.Sample, "other");
        Set(production, "eo");
        var (_, printed, _) = _bench.Run("make", production, "--out", "english");

        Assert.Contains("There is no words file for the language 'eo'", printed, StringComparison.Ordinal);
        Assert.Contains("Camera report", File.ReadAllText(_bench.PathOf("english/camera-report-R01.html")), StringComparison.Ordinal);
    }

    [Fact]
    public void One_line_in_a_users_own_words_file_changes_only_that_line()
    {
        Directory.CreateDirectory(_bench.PathOf("own"));
        File.WriteAllText(_bench.PathOf("own/words.en.txt"), "camera-report = Negative report\ncamra-report = x\n");

        var (status, printed, _) = _bench.Run("make", Repository.Sample, "--out", "papers", "--templates", "own");

        Assert.Equal(0, status);
        Assert.Contains("own/words.en.txt:2:1: warning: No paper uses the words `camra-report`", printed, StringComparison.Ordinal);
        var page = File.ReadAllText(_bench.PathOf("papers/camera-report-R01.html"));
        Assert.Contains("<h1>Negative report</h1>", page, StringComparison.Ordinal);
        Assert.Contains("Loaded by", page, StringComparison.Ordinal);
    }

    [Fact]
    public void A_machine_of_another_country_and_another_clock_makes_the_same_bytes()
    {
        var german = German();
        (string Language, string Zone)[] machines =
        [
            ("C", "UTC"),
            ("de_DE.UTF-8", "Europe/Berlin"),
            ("tr_TR.UTF-8", "Pacific/Auckland"),
            ("ar_EG.UTF-8", "America/St_Johns"),
        ];
        Parallel.ForEach(machines.Select((machine, i) => (machine, i)), machine =>
            MakeOn(machine.machine, german, _bench.PathOf(machine.i.ToString(CultureInfo.InvariantCulture)))
        );

        var first = Bench.Bytes(_bench.PathOf("0"));
        Assert.True(first.Count > 20);
        Assert.All(Enumerable.Range(1, machines.Length - 1), i =>
            Assert.Equal(first, Bench.Bytes(_bench.PathOf(i.ToString(CultureInfo.InvariantCulture))))
        );
    }

    static void MakeOn((string Language, string Zone) machine, string production, string papers)
    {
        var start = new ProcessStartInfo(
            "dotnet",
            ["exec", Path.Combine(AppContext.BaseDirectory, "spoolbook.dll"), "make", production, "--out", papers]
        )
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        (start.Environment["LANG"], start.Environment["LC_ALL"], start.Environment["TZ"], start.Environment["SOURCE_DATE_EPOCH"]) = (
            machine.Language,
            machine.Language,
            machine.Zone,
            "1790000000"
        );
        using var process = Process.Start(start)!;
        var complained = process.StandardError.ReadToEndAsync();
        var said = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        Assert.True(process.ExitCode == 0, said + complained.Result);
    }

    string German(string language = "de")
    {
        var production = _bench.CopyOf(Repository.Sample);
        Set(production, language);
        return production;
    }

    static void Set(string production, string language)
    {
        var sheet = Path.Combine(production, "production.yaml");
        File.WriteAllText(sheet, File.ReadAllText(sheet).Replace("language: en", "language: " + language, StringComparison.Ordinal));
    }

    [GeneratedRegex(
        @"\b(Loaded by|Film loaded|Camera body|Short end|on the screen|Rewound to|Run off to|fade (in|out) \d|lens capped|Effects made"
            + @"|Lengths in|Meter for|past a full wind|Page \d|Variable shutter|Filters in the kit|from normal|subdued light|EXPOSED"
            + @"|DO NOT OPEN|Return to)"
    )]
    private static partial Regex LeftoverEnglish();
}
