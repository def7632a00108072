using System.Text.Json;
using System.Text.RegularExpressions;

namespace Spoolbook.Tests;

/// <summary>Nothing that somebody wrote steers the terminal: no text, and no name of a file. Nothing runs out of it either.</summary>
public sealed partial class TerminalTests : IDisposable
{
    readonly Bench _bench = new();

    public void Dispose() => _bench.Dispose();

    [Fact]
    public void The_name_of_a_file_is_printed_with_the_numbers_of_what_a_terminal_would_obey()
    {
        var production = Strange();

        var (status, said, _) = _bench.Run("check", production);

        Assert.Equal(1, status);
        Assert.Contains(@"rolls/r\u001B[2J\u202E.yaml:", said, StringComparison.Ordinal);
        Assert.DoesNotContain(said, c => c is '\u001b' or '\u202e');
    }

    [Theory]
    [InlineData("json")]
    [InlineData("sarif")]
    public void Programs_get_the_name_as_it_is_in_json_that_can_be_read(string format)
    {
        var (_, said, _) = _bench.Run("check", Strange(), "--format", format);

        using var json = JsonDocument.Parse(said);
        Assert.DoesNotContain('\u001b', said);
    }

    [Theory]
    [InlineData("check", "no\u001b[2Jwhere")]
    [InlineData("check", "x", "--for\u001b[2Jmat")]
    [InlineData("explain", "no\u001b[2Jthing")]
    [InlineData("reckon", "length", "1\u001b[2J")]
    public void What_was_typed_is_not_given_back_as_it_is(params string[] line)
    {
        var (_, said, error) = _bench.Run(line);

        Assert.DoesNotContain('\u001b', said + error);
        Assert.Contains(@"\u001B[2J", error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(40, false)]
    [InlineData(40, true)]
    [InlineData(80, true)]
    public void Findings_break_between_words_on_a_screen_and_lose_none(int width, bool colour)
    {
        var (_, whole, _) = _bench.Run("check", Repository.Sample);

        var (_, said, _) = _bench.RunAt(width, colour, "check", Repository.Sample);

        var shown = Colour().Replace(said, "");
        Assert.All(shown.Split('\n'), line =>
            Assert.True(line.Length <= width || !line.Trim().Contains(' ', StringComparison.Ordinal), line)
        );
        Assert.Equal(Words(whole), Words(shown));
    }

    // An excerpt shows as much of a line as there is room for.
    static string[] Words(string said) => Excerpt().Replace(said, "").Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries);

    [GeneratedRegex(@"\e\[[0-9;]*m")]
    private static partial Regex Colour();

    [GeneratedRegex(@"^ *\d* \|.*$", RegexOptions.Multiline)]
    private static partial Regex Excerpt();

    string Strange()
    {
        var production = _bench.CopyOf(Repository.Sample);
        File.WriteAllText(Path.Combine(production, "rolls", "r\u001b[2J\u202e.yaml"), "spoolbook: 1\nroll: R9\n");
        return production;
    }
}
