using System.Text.RegularExpressions;

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
    public void A_day_said_line_by_line_comes_to_the_papers_of_the_day_written_by_hand() =>
        AssertSamePapers(bench =>
        {
            foreach (var line in _lines.Where(l => l.Length > 0 && l[0] != '#' && !l.StartsWith("day ", StringComparison.Ordinal)))
            {
                // Said when it happens: the clock gives the date.
                var hour = Hour().Match(line) is { Success: true } said
                    ? TimeOnly.Parse(said.Value, null)
                    : TimeOnly.FromDateTime(bench.Now);
                bench.Now = new DateOnly(2026, 2, hour.Hour < 6 ? 11 : 10).ToDateTime(hour);
                var words = line.Split(' ');
                var (status, _, error) = words[0] is "load" or "unload" ? bench.Run(words) : bench.Run("log", line);
                Assert.True(status == 0, $"{line}: {error}");
            }
        });

    [Fact]
    public void A_day_said_at_the_prompt_comes_to_the_papers_of_the_day_written_by_hand() =>
        AssertSamePapers(bench => Assert.Equal(0, bench.Piped(string.Join('\n', _lines), "log").Status));

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
