using System.Text.Json;

namespace Spoolbook.Tests;

/// <summary>Nothing that somebody wrote steers the terminal: not a text, and not the name of a file.</summary>
public sealed class TerminalTests : IDisposable
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

    string Strange()
    {
        var production = _bench.CopyOf(Repository.Sample);
        File.WriteAllText(Path.Combine(production, "rolls", "r\u001b[2J\u202e.yaml"), "spoolbook: 1\nroll: R9\n");
        return production;
    }
}
