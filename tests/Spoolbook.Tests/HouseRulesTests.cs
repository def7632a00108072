namespace Spoolbook.Tests;

/// <summary>A department's own rules for every check, as the command applies them.</summary>
public sealed class HouseRulesTests : IDisposable
{
    readonly Bench _bench = new();

    public void Dispose() => _bench.Dispose();

    [Fact]
    public void A_warning_made_an_error_fails_the_check_and_an_error_made_a_note_does_not()
    {
        Assert.Equal(0, _bench.Run("check", Repository.Sample).Status);
        var production = _bench.CopyOf(Repository.Sample);
        File.AppendAllText(Path.Combine(production, "production.yaml"), "\nrules: {levels: {speed: error}}\n");

        Assert.Equal(1, _bench.Run("check", production).Status);
    }
}
