using System.Text;
using Spoolbook.Film;
using Spoolbook.Shoot.Accounts;

namespace Spoolbook.Printing;

/// <summary>
/// A roll as a bar of letters, in the order of its account: G good, H hold, N no good, W waste, and dots for film not exposed. The
/// letters are those of the camera report, so nobody needs a legend, a colour or a good screen.
/// </summary>
internal static class FilmBar
{
    /// <summary>The bar.</summary>
    /// <param name="width">Columns of the longest roll.</param>
    /// <param name="longest">The longest roll.</param>
    public static string Of(Tally tally, Footage longest, int width, Ink ink)
    {
        (char Sign, Footage Film, Func<string, string> Paint)[] parts =
        [
            ('G', tally.Good, ink.Good),
            ('H', tally.Hold, ink.Hold),
            ('N', tally.NoGood, ink.NoGood),
            ('W', tally.Waste, ink.Waste),
            ('.', tally.ShortEnd, text => text),
        ];
        var columns = Columns([.. parts.Select(p => p.Film.Frames)], longest.Frames, width);
        var bar = new StringBuilder();
        foreach (var ((sign, _, paint), count) in parts.Zip(columns))
        {
            bar.Append(count > 0 ? paint(new string(sign, count)) : "");
        }

        return bar.Append(' ', width - columns.Sum()).ToString();
    }

    // No account that has film is without a column: a foot of waste is seen as well.
    static int[] Columns(long[] frames, long longest, int width)
    {
        var loaded = frames.Sum();
        if (loaded == 0 || longest == 0)
        {
            return new int[frames.Length];
        }

        var some = frames.Count(f => f > 0);
        var all = Math.Clamp((int)(new Ratio(loaded * width, longest)).Round(), some, width);
        var rest = LargestRemainder.Round([.. frames.Select(f => new Ratio(f * (all - some), loaded))], all - some);
        return [.. frames.Select((f, i) => (f > 0 ? 1 : 0) + (int)rest[i])];
    }
}
