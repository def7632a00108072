namespace Spoolbook.Tests;

/// <summary>What a hand expects of any command: options that are guessed, quiet and strict runs, colour, examples to copy.</summary>
public sealed class CommandHabitTests : IDisposable
{
    readonly Bench _bench = new();

    public void Dispose() => _bench.Dispose();

    [Theory]
    [InlineData("spoolbook: there is no option '--fromat' here. Did you mean --format?\n", "check", "x", "--fromat", "json")]
    [InlineData("spoolbook: there is no option '--form' here. Did you mean --format?\n", "check", "--form=json")]
    [InlineData("spoolbook: there is no option '--nope' here.\n", "check", "--nope")]
    [InlineData("spoolbook: there is no option '--dryrun' here. Did you mean --dry-run?\n", "log", "--dryrun", "1A/4 to 70")]
    [InlineData("spoolbook: --format: there is no 'yaml': write text, json, sarif or github.\n", "check", "--format", "yaml")]
    [InlineData("spoolbook: --format: there is no 'jsn'. Did you mean json?\n", "status", "--format", "jsn")]
    [InlineData("spoolbook: --units: there is no 'meters'. Did you mean metres?\n", "reckon", "length", "3ft", "--units", "meters")]
    public void A_guessed_option_or_value_is_answered_with_the_one_that_is_there(string said, params string[] line)
    {
        var (status, _, error) = _bench.RunIn(_bench.CopyOf(Repository.Sample), line);

        Assert.Equal(2, status);
        Assert.StartsWith(said, error, StringComparison.Ordinal);
        Assert.DoesNotContain("System.", error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("rolls/r01.yaml")]
    [InlineData("production.yaml")]
    [InlineData("stock.yaml")]
    public void Any_file_of_a_production_stands_for_all_of_it(string file)
    {
        var production = _bench.CopyOf(Repository.Sample);

        Assert.Equal(_bench.RunIn(production, "check"), _bench.RunIn(production, "check", file));
    }

    [Fact]
    public void A_quiet_check_says_nothing_where_there_is_no_error()
    {
        Assert.Equal((0, "", ""), _bench.Run("check", Repository.Sample, "-q"));
    }

    [Fact]
    public void A_quiet_check_still_says_errors()
    {
        var production = _bench.CopyOf(Repository.Sample);
        var roll = Path.Combine(production, "rolls", "r01.yaml");
        File.WriteAllText(roll, File.ReadAllText(roll).Replace("lot: N250-A", "lot: N250-Z", StringComparison.Ordinal));

        var (status, said, _) = _bench.Run("check", production, "--quiet");

        Assert.Equal(1, status);
        Assert.Contains("[stock/unknown-lot]", said, StringComparison.Ordinal);
        Assert.DoesNotContain("warning:", said, StringComparison.Ordinal);
    }

    [Fact]
    public void A_verbose_check_says_what_was_accepted_and_why()
    {
        var (_, usual, _) = _bench.Run("check", Repository.Sample);
        var (_, said, _) = _bench.Run("check", Repository.Sample, "-v");

        Assert.Contains("Accepted as intentional:\n  rolls/", said, StringComparison.Ordinal);
        Assert.DoesNotContain("Accepted as intentional", usual, StringComparison.Ordinal);
        Assert.DoesNotContain(", …)", said, StringComparison.Ordinal);
    }

    [Fact]
    public void Quiet_and_verbose_at_once_are_refused()
    {
        var (status, _, error) = _bench.Run("check", Repository.Sample, "-q", "-v");

        Assert.Equal(2, status);
        Assert.Contains("--quiet and --verbose", error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_strict_check_fails_by_a_warning()
    {
        var (usual, _, _) = _bench.Run("check", Repository.Sample);
        var (strict, _, _) = _bench.Run("check", Repository.Sample, "--strict");

        Assert.Equal((0, 1), (usual, strict));
    }

    [Theory]
    [InlineData(true, false, "--color", "always")]
    [InlineData(true, false, "--colour=always")]
    [InlineData(false, true, "--color", "never")]
    [InlineData(true, true, "--color", "auto")]
    [InlineData(false, false, "--color", "auto")]
    public void Colour_is_as_it_was_asked_for(bool expected, bool terminal, params string[] options)
    {
        var (_, said, _) = _bench.RunAt(100, terminal, ["check", Repository.Sample, .. options]);

        Assert.Equal(expected, said.Contains('\u001b'));
    }

    [Fact]
    public void Help_gives_lines_to_copy()
    {
        var (status, said, _) = _bench.Run("check", "--help");

        Assert.Equal(0, status);
        Assert.Contains("Examples:\n  spoolbook check\n", said, StringComparison.Ordinal);
        Assert.Contains("--format <text|json|sarif|github>", said, StringComparison.Ordinal);
        Assert.Contains("Usually text.", said, StringComparison.Ordinal);
    }
}
