namespace Spoolbook.Reading.Maps;

/// <summary>The word that somebody probably meant.</summary>
static class Nearest
{
    // Beyond it nobody slipped, and the reckoning grows with the square.
    const int LongestWord = 40;

    /// <summary>The nearest of the words, or null where none is near: one slip in three letters at most.</summary>
    public static string? To(string written, IEnumerable<string> words)
    {
        if (written.Length > LongestWord)
        {
            return null;
        }

        var typed = written.ToLowerInvariant().Replace('_', '-').Replace(' ', '-');
        var best = words.Where(word => word.Length <= LongestWord).MinBy(word => Slips(typed, word));
        return best is not null && Slips(typed, best) <= Math.Max(1, Math.Max(typed.Length, best.Length) / 3) ? best : null;
    }

    /// <summary>
    /// Letters left out, put in, changed, or swapped with their neighbour, to get from one word to the other;
    /// capital letters are no slip.
    /// </summary>
    static int Slips(string from, string word)
    {
        var to = word.ToLowerInvariant();
        var slips = new int[from.Length + 1, to.Length + 1];
        for (var i = 0; i <= from.Length; i++)
        {
            for (var j = 0; j <= to.Length; j++)
            {
                slips[i, j] = (i, j) switch
                {
                    (_, 0) => i,
                    (0, _) => j,
                    _ => Math.Min(Math.Min(slips[i - 1, j], slips[i, j - 1]) + 1, slips[i - 1, j - 1] + (from[i - 1] == to[j - 1] ? 0 : 1)),
                };
                if (i > 1 && j > 1 && from[i - 1] == to[j - 2] && from[i - 2] == to[j - 1])
                {
                    slips[i, j] = Math.Min(slips[i, j], slips[i - 2, j - 2] + 1);
                }
            }
        }

        return slips[from.Length, to.Length];
    }
}
