using Spoolbook.Film;
using Spoolbook.Papers.PocketLogs;

namespace Spoolbook.Papers.Tests.PocketLogs;

public sealed class LensRingTests
{
    [Fact]
    public void A_lens_from_2_to_4_is_set_to_these_and_to_thirds_and_halves_between() =>
        Assert.Equal(
            [
                ["2", "2 1/3", "2/2.8", "2 2/3"],
                ["2.8", "2.8 1/3", "2.8/4", "2.8 2/3"],
                ["4", null, null, null],
            ],
            Rows(Stop.OfNumber(2), Stop.OfNumber(4))
        );

    [Fact]
    public void A_widest_stop_between_two_full_ones_comes_first_and_nothing_is_wider() =>
        // 1.6 is 1.36 stops down from 1: wider than 1.4/2, smaller than 1.4 and a third (Av = 2 log2 N).
        Assert.Equal(["1.6", null, "1.4/2", "1.4 2/3"], Rows(Stop.OfNumber(1.6), Stop.OfNumber(22))[0]);

    [Fact]
    public void A_lens_marked_in_T_stops_stays_so() =>
        Assert.All(Rows(Stop.OfNumber(2, StopMark.T), Stop.OfNumber(16)).SelectMany(row => row).OfType<string>(), stop =>
            Assert.StartsWith("T", stop, StringComparison.Ordinal)
        );

    static IReadOnlyList<IReadOnlyList<string?>> Rows(Stop widest, Stop smallest) =>
        [.. LensRing.Rows(widest, smallest).Select(row => (IReadOnlyList<string?>)[.. row])];
}
