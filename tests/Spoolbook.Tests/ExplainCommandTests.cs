using Spoolbook.Checks;

namespace Spoolbook.Tests;

/// <summary>The command <c>explain</c> as a shell sees it.</summary>
public sealed class ExplainCommandTests : IDisposable
{
    readonly Bench _bench = new();

    public void Dispose() => _bench.Dispose();

    [Fact]
    public void A_check_is_found_by_its_group_or_by_a_word_of_its_name()
    {
        var (status, group, _) = _bench.Run("explain", "counter");

        Assert.Equal(0, status);
        Assert.Equal(
            Catalogue.All.Count(page => page.Group == "counter") + 1,
            group.Split('\n', StringSplitOptions.RemoveEmptyEntries).Length
        );
        Assert.Equal(_bench.Run("explain", "speed/spring-overrun"), _bench.Run("explain", "overrun"));
        Assert.Contains("alone lists them all", _bench.Run("explain", "grease").Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_word_that_several_checks_hold_is_answered_with_the_list()
    {
        var (status, printed, error) = _bench.Run("explain", "spring");

        Assert.Equal((2, ""), (status, printed));
        Assert.Contains("Which of these", error, StringComparison.Ordinal);
        Assert.Contains("  speed/spring-overrun ", error, StringComparison.Ordinal);
        Assert.True(error.Split('\n').Length > 3);
    }

    [Fact]
    public void A_check_can_be_explained_and_a_misspelt_one_is_answered_with_the_nearest()
    {
        Assert.Contains("unit", _bench.Run("explain", "stock/unit-loaded-twice").Out, StringComparison.Ordinal);

        Assert.Equal(0, _bench.Run("explain", "sheet/unknown-key").Status);

        var (status, _, error) = _bench.Run("explain", "stock/unit-loaded-twise");

        Assert.Equal(2, status);
        Assert.Contains("stock/unit-loaded-twice", error, StringComparison.Ordinal);
    }
}
