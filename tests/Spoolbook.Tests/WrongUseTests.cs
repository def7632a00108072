namespace Spoolbook.Tests;

/// <summary>A slip on the command line.</summary>
public sealed class WrongUseTests : IDisposable
{
    readonly Bench _bench = new();

    public void Dispose() => _bench.Dispose();

    [Theory]
    [InlineData("check", "x", "--format", "yaml")]
    public void Used_wrongly_the_command_says_so_with_status_2(params string[] args)
    {
        var (status, _, error) = _bench.Run(args);

        Assert.Equal(2, status);
        Assert.Contains("--help", error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("spoolbook: there is no 'lenght'. Did you mean length?\nTry: spoolbook reckon --help\n", "reckon", "lenght", "3ft")]
    [InlineData(
        "spoolbook: there is no folder or file 'nowhere' here. Name the folder that holds production.yaml.\nTry: spoolbook check --help\n",
        "check",
        "nowhere"
    )]
    public void A_slip_on_the_command_line_is_answered_with_what_to_type(string told, params string[] args)
    {
        var (status, printed, error) = _bench.Run(args);

        Assert.Equal((2, "", told), (status, printed, error));
    }
}
