namespace Spoolbook.Shoot.Findings;

/// <summary>The name in a list that a misspelt one most likely means: the "did you mean" of findings.</summary>
public static class Likeness
{
    // A longer name is no slip, and the work grows with the square.
    const int LongestName = 40;

    /// <summary>The name the fewest slips away; of several, the first by alphabet. Null beyond one slip in three letters.</summary>
    public static string? Nearest(string written, IEnumerable<string> names)
    {
        if (written.Length > LongestName)
        {
            return null;
        }

        var typed = Plain(written);
        var near =
            from name in names
            where name.Length <= LongestName
            let slips = IsSameNumber(typed, Plain(name)) ? 1 : Slips(typed, Plain(name))
            where slips <= Math.Max(1, Math.Max(typed.Length, name.Length) / 3)
            select (name, slips);
        return near.OrderBy(n => n.slips).ThenBy(n => n.name, StringComparer.Ordinal).Select(n => n.name).FirstOrDefault();
    }

    // Case is no slip, and neither is what joins two words.
    static string Plain(string name) => name.ToLowerInvariant().Replace('_', '-').Replace(' ', '-');

    // A lens is `25` in one list and `25mm` in the other.
    static bool IsSameNumber(string one, string other)
    {
        var (first, second) = (Figures(one), Figures(other));
        return first > 0
            && first == second
            && (first == one.Length || second == other.Length)
            && one.AsSpan(0, first).SequenceEqual(other.AsSpan(0, second))
            && !one.AsSpan(first).ContainsAnyInRange('0', '9')
            && !other.AsSpan(second).ContainsAnyInRange('0', '9');
    }

    static int Figures(string name)
    {
        var end = name.AsSpan().IndexOfAnyExceptInRange('0', '9');
        return end < 0 ? name.Length : end;
    }

    /// <summary>Letters left out, added, changed, or swapped with their neighbour, from one word to the other.</summary>
    static int Slips(string from, string to)
    {
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
