namespace Spoolbook.Tests;

/// <summary>What the small program of a published build passes on to the whole one.</summary>
public sealed class QuickCommandTests : IDisposable
{
    readonly Bench _bench = new();

    public void Dispose() => _bench.Dispose();

    [Theory]
    [InlineData("make", "a production", "--draft")]
    [InlineData("import", "takes.csv")]
    [InlineData("schema")]
    [InlineData("--help")]
    [InlineData("chekc", "production")]
    [InlineData("")]
    [InlineData]
    public void The_rest_goes_to_the_whole_program_word_for_word_and_its_status_comes_back(params string[] line)
    {
        string[]? given = null;

        var status = QuickCommands.Run(
            line,
            new CommandEnvironment(TextWriter.Null, TextWriter.Null, _bench.Folder, Workbench.Made, Colour: false, Width: 100),
            args =>
            {
                given = args;
                return 3;
            }
        );

        Assert.Equal((line, 3), (given!, status));
    }
}
