namespace Spoolbook.Acceptance;

/// <summary>
/// The small program of a published build, which runs the commands without papers itself and starts the whole one for
/// the rest.
/// </summary>
public sealed class QuickCommandTests : IDisposable
{
    readonly Bench _bench = new();

    public void Dispose() => _bench.Dispose();

    [Theory]
    [InlineData("check", "SAMPLE")]
    [InlineData("check", "SAMPLE", "--format", "json")]
    [InlineData("check", "SAMPLE", "--format", "sarif")]
    [InlineData("check", "--help")]
    [InlineData("check")]
    [InlineData("check", "nowhere")]
    [InlineData("check", "SAMPLE", "--fromat", "json")]
    [InlineData("status", "SAMPLE")]
    [InlineData("help", "status")]
    [InlineData("log", "--help")]
    [InlineData("log", "R06: amend 7C/3 H", "--dry-run", "--in", "SAMPLE")]
    [InlineData("log", "R06: amend 7C/3 25mm 75mm", "--dry-run", "--in", "SAMPLE")]
    [InlineData("log", "wind", "--format", "json", "--dry-run", "--in", "SAMPLE")]
    [InlineData("log", "wind")]
    [InlineData("load", "R01", "--dry-run", "--in", "SAMPLE")]
    [InlineData("unload", "--dry-run", "--in", "SAMPLE")]
    [InlineData("receive")]
    [InlineData("receive", ".")]
    [InlineData("explain")]
    [InlineData("explain", "kit/finder-open")]
    [InlineData("explain", "finder-opne")]
    [InlineData("reckon", "--help")]
    [InlineData("reckon", "length", "100ft", "--fps", "24")]
    [InlineData("reckon", "legnth", "100ft")]
    public void What_needs_no_paper_is_answered_as_the_whole_program_answers_it(params string[] line)
    {
        var args = line.Select(word => word == "SAMPLE" ? Repository.Sample : word).ToArray();
        var whole = _bench.Run(args);
        using var output = new StringWriter { NewLine = "\n" };
        using var error = new StringWriter { NewLine = "\n" };

        var status = QuickCommands.Run(
            args,
            new CommandEnvironment(output, error, _bench.Folder, Bench.Made, Colour: false, Width: 100),
            _ => throw new InvalidOperationException("The whole program was started.")
        );

        Assert.Equal(whole, (status, output.ToString(), error.ToString()));
    }
}
