using System.Collections.Immutable;

namespace Spoolbook.Checks.Counters;

/// <summary>The letters of shots: A to Z without I and O, which read as 1 and 0, and then AA (common practice).</summary>
static class ShotLetters
{
    // A gap of more letters than that is a choice: P for a pick-up, W for the wide shot.
    const int MostSkipped = 2;

    static readonly ImmutableArray<string> Series = [.. "ABCDEFGHJKLMNPQRSTUVWXYZ".Select(c => c.ToString()), "AA"];

    /// <summary>Whether a letter reads as a figure.</summary>
    public static bool ReadsAsFigure(string? letter) => letter is "I" or "O" or "i" or "o";

    /// <summary>
    /// The letters missing just before one of a scene's letters; none where the series is unbroken or there is no
    /// series.
    /// </summary>
    public static ImmutableArray<string> MissingBefore(string letter, IReadOnlyCollection<string?> inScene)
    {
        var at = Series.IndexOf(letter);
        var last = Enumerable.Range(0, Math.Max(at, 0)).Reverse().FirstOrDefault(i => inScene.Contains(Series[i]), -1);
        return at < 0 || last < 0 || at - last - 1 > MostSkipped ? [] : Series[(last + 1)..at];
    }
}
