using Spoolbook.Shoots;

namespace Spoolbook.Tests;

/// <summary>Generated terms: what students who slip never give nothing to find, and careful ones nothing.</summary>
public sealed class TermOfShootsTests : IDisposable
{
    readonly Bench _bench = new();

    public void Dispose() => _bench.Dispose();

    [Fact]
    public void A_careful_crew_gives_the_checks_nothing_to_find()
    {
        new TermOfShoots(1, 3, MistakeRates.None).WriteTo(_bench.PathOf("term"));
        var (status, printed, _) = _bench.Run("check", "term");
        Assert.True(status == 0, printed);
        Assert.EndsWith("3 productions: no errors, no warnings, no notes.\n", printed, StringComparison.Ordinal);
    }

    [Fact]
    public void Students_slip_and_the_checks_find_it()
    {
        var term = new TermOfShoots(1, 6, MistakeRates.Usual);
        term.WriteTo(_bench.PathOf("term"));
        var printed = _bench.Run("check", "term").Out;
        Assert.True(term.Mistakes > 0);
        Assert.DoesNotContain("6 productions: no errors, no warnings", printed, StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_seed_gives_the_same_term()
    {
        var (one, same, other) = (Files(7), Files(7), Files(8));
        Assert.Equal(one, same);
        Assert.NotEqual(one, other);
    }

    static List<(string Name, string Text)> Files(int seed) => [.. new TermOfShoots(seed, 2, MistakeRates.Usual).Files()];
}
