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
        string? nearest = null;
        var fewest = int.MaxValue;
        foreach (var name in names.Where(n => n.Length <= LongestName))
        {
            var most = Math.Max(1, Math.Max(typed.Length, name.Length) / 3);
            var plain = Plain(name);
            var slips =
                IsSameNumber(typed, plain) ? 1
                // Each letter more is a slip: a long list is mostly names that are far too long or too short.
                : Math.Abs(typed.Length - plain.Length) > Math.Min(most, fewest) ? int.MaxValue
                : Slips(typed, plain);
            if (slips <= most && (slips < fewest || (slips == fewest && string.CompareOrdinal(name, nearest) < 0)))
            {
                (nearest, fewest) = (name, slips);
            }
        }

        return nearest;
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
        // The row of the letter at hand and the two before it.
        Span<int> rows = stackalloc int[3 * (LongestName + 1)];
        var row = rows[..(LongestName + 1)];
        var before = rows.Slice(LongestName + 1, LongestName + 1);
        var earlier = rows.Slice(2 * (LongestName + 1), LongestName + 1);
        for (var j = 0; j <= to.Length; j++)
        {
            row[j] = j;
        }

        for (var i = 1; i <= from.Length; i++)
        {
            var spare = earlier;
            earlier = before;
            before = row;
            row = spare;
            row[0] = i;
            for (var j = 1; j <= to.Length; j++)
            {
                row[j] = Math.Min(Math.Min(before[j], row[j - 1]) + 1, before[j - 1] + (from[i - 1] == to[j - 1] ? 0 : 1));
                if (i > 1 && j > 1 && from[i - 1] == to[j - 2] && from[i - 2] == to[j - 1])
                {
                    row[j] = Math.Min(row[j], earlier[j - 2] + 1);
                }
            }
        }

        return row[to.Length];
    }
}
