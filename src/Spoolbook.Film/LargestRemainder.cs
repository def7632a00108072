using System.Numerics;

namespace Spoolbook.Film;

/// <summary>
/// Rounds parts so that they add up to their printed sum. Each part is rounded down, and the missing units go, one each,
/// to the parts with the largest remainders (T. Hare's method of counting votes, 1859).
/// </summary>
public static class LargestRemainder
{
    /// <summary>The parts in whole units. A part of zero stays zero. Among equal remainders the first part gets the unit.</summary>
    /// <param name="parts">The parts in units; none below zero.</param>
    /// <param name="sum">What they are to add up to, in units; not below zero, and zero where every part is.</param>
    /// <exception cref="ArgumentOutOfRangeException">A part or the sum is below zero, or a sum has no parts.</exception>
    public static long[] Round(IReadOnlyList<Ratio> parts, long sum)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(sum);
        if (parts.Any(p => p.Sign < 0))
        {
            throw new ArgumentOutOfRangeException(nameof(parts), "A part is below zero.");
        }

        if (sum > 0 && parts.All(p => p.Sign == 0))
        {
            throw new ArgumentOutOfRangeException(nameof(parts), "A sum has no parts.");
        }

        var rounded = parts.Select(p => (long)p.Floor()).ToArray();
        var missing = new BigInteger(sum) - rounded.Aggregate(BigInteger.Zero, (all, r) => all + r);
        int[] byRemainder =
        [
            .. Enumerable.Range(0, parts.Count).Where(i => parts[i].Sign > 0).OrderByDescending(i => parts[i] - rounded[i]),
        ];

        // Parts of a sum that was made to fit itself can miss it by more than a unit each.
        for (var at = 0; missing > 0; at = (at + 1) % byRemainder.Length, missing--)
        {
            rounded[byRemainder[at]]++;
        }

        for (var at = byRemainder.Length - 1; missing < 0; at = at == 0 ? byRemainder.Length - 1 : at - 1)
        {
            if (rounded[byRemainder[at]] > 0)
            {
                rounded[byRemainder[at]]--;
                missing++;
            }
        }

        return rounded;
    }
}
