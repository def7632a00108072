using System.Text.RegularExpressions;
using Spoolbook.Acceptance.PocketLogs;
using Spoolbook.Reading;
using Spoolbook.Reading.Files;

namespace Spoolbook.Acceptance.Logging;

/// <summary>
/// An invented day of three rolls and thirty takes, with a dissolve, a mistake and its correction, and a roll that goes
/// over midnight: said line by line or in one file, it comes to the same papers as written by hand.
/// </summary>
public sealed partial class LoggedDayTests
{
    static readonly string _day = Path.Combine(Repository.Root, "tests", "Spoolbook.Acceptance", "Logging", "day");

    static readonly string[] _lines = File.ReadAllLines(Path.Combine(_day, "lines.txt"));

    [Fact]
    public void A_day_in_one_file_of_lines_comes_to_the_papers_of_the_day_written_by_hand() =>
        AssertSamePapers(bench =>
        {
            File.WriteAllLines(bench.PathOf("lines.txt"), _lines);
            Assert.Equal(0, bench.Run("log", "../lines.txt").Status);
        });

    [Fact]
    public void A_day_begun_and_said_line_by_line_comes_to_the_papers_of_the_day_written_by_hand()
    {
        using var written = new LoggingBench();
        Begin(written);
        using var logged = new LoggingBench();
        logged.CopyOf(written.Production);
        foreach (var roll in Directory.GetFiles(Path.Combine(_day, "rolls")))
        {
            File.Copy(roll, Path.Combine(written.Production, "rolls", Path.GetFileName(roll)));
        }

        foreach (var line in _lines.Where(l => l.Length > 0 && l[0] != '#' && !l.StartsWith("day ", StringComparison.Ordinal)))
        {
            // Said when it happens: the clock gives the date.
            var hour = Hour().Match(line) is { Success: true } said ? TimeOnly.Parse(said.Value, null) : TimeOnly.FromDateTime(logged.Now);
            logged.Now = new DateOnly(2026, 2, hour.Hour < 6 ? 11 : 10).ToDateTime(hour);
            var words = line.Split(' ');
            var (status, _, error) = words[0] is "load" or "unload" ? logged.Run(words) : logged.Run("log", line);
            Assert.True(status == 0, $"{line}: {error}");
        }

        Assert.Contains("R3", logged.Run("status").Out, StringComparison.Ordinal);
        Assert.Equal(0, logged.Run("check").Status);
        Assert.Equal(Papers(written), Papers(logged));
    }

    // What `new` does not ask for is written into its files, as their comments show.
    static void Begin(LoggingBench bench)
    {
        var (status, said, error) = bench.New(
            "--yes",
            "--title",
            "The Lamplighter's Leave",
            "--first-day",
            "2026-02-10",
            "--lot",
            "X: Black-and-white reversal 200, 200, none, bw-reversal, 100ft, 4",
            "--body",
            "B1: Spring-wound reflex, speeds 12 16 24 32 48 64, shutter 133, wind 18ft, takes 100ft, finder 25%",
            "--lens",
            "10mm 1.6-22 1ft, 25mm 1.9-22 2ft",
            "--person",
            "pim: Pim Haddad-Ortega, Camera",
            "--person",
            "noor: Noor Lindqvist-Obi, Camera assistant",
            "--lab",
            "Brackwater Film Laboratory"
        );
        Assert.True(status == 0, said + error);
        File.AppendAllText(
            Path.Combine(bench.Production, "kit.yaml"),
            "filters:\n  - {filter: ND3, what: Neutral 0.3, stops: 1}\nmeters:\n  - {meter: M1, what: Incident meter}\n"
        );
    }

    [Fact]
    public void A_day_said_at_the_prompt_comes_to_the_papers_of_the_day_written_by_hand() =>
        AssertSamePapers(bench => Assert.Equal(0, bench.Piped(string.Join('\n', _lines), "log").Status));

    [ToolFact("chromium")]
    public async Task A_day_that_is_tapped_into_the_pocket_log_comes_to_the_papers_of_the_day_written_by_hand()
    {
        using var logged = new LoggingBench();
        logged.CopyOf(_day);
        var day = ProductionReader.Read(new FolderFiles(logged.Production)).Production!;
        var rolls = Path.Combine(logged.Production, "rolls");
        Directory.Delete(rolls, recursive: true);
        Assert.Equal(0, logged.Run("make").Status);
        await using (var telephone = await Telephone.With(Path.Combine(logged.Production, "papers", "pocket-log.html")))
        {
            await new Thumb(telephone).Tap(day);
            Assert.Empty(telephone.Complaints);
            await File.WriteAllTextAsync(logged.PathOf("lines.txt"), await telephone.Lines());
        }

        var (status, said, error) = logged.Run("log", "../lines.txt");
        Assert.True(status == 0, said + error);
        Assert.Equal(_byHand.Value, Papers(logged));

        var before = Directory.GetFiles(rolls).Order().Select(File.ReadAllText).ToList();
        Assert.Equal(0, logged.Run("log", "../lines.txt").Status);
        Assert.Equal(before, Directory.GetFiles(rolls).Order().Select(File.ReadAllText));
    }

    static readonly Lazy<string[]> _byHand = new(() =>
    {
        using var written = new LoggingBench();
        written.CopyOf(_day);
        return Papers(written);
    });

    static void AssertSamePapers(Action<LoggingBench> log)
    {
        using var logged = new LoggingBench();
        logged.CopyOf(_day);
        Directory.Delete(Path.Combine(logged.Production, "rolls"), recursive: true);

        log(logged);

        Assert.Equal(_byHand.Value, Papers(logged));
    }

    // A line of comment more or less moves places, and nothing else.
    static string[] Papers(LoggingBench bench)
    {
        var (status, _, error) = bench.Run("make", ".");
        Assert.Equal((0, ""), (status, error));
        return
        [
            Place().Replace(bench.Read("papers/ledger.json"), "rolls"),
            .. ((string[])["R1", "R2", "R3"]).Select(roll => bench.Read($"papers/camera-report-{roll}.html")),
        ];
    }

    [GeneratedRegex("rolls/r[123].yaml:[0-9]+:[0-9]+")]
    private static partial Regex Place();

    [GeneratedRegex("(?<= )[0-9]{1,2}:[0-9]{2}")]
    private static partial Regex Hour();
}
