namespace Spoolbook.Shoot.Records;

/// <summary>Names in natural order: R2 before R10, 7 before 7A before 10, and no name last.</summary>
public sealed class NameOrder : IComparer<string?>
{
    /// <summary>The only instance.</summary>
    public static NameOrder Instance { get; } = new();

    /// <inheritdoc/>
    public int Compare(string? x, string? y)
    {
        if (x is null || y is null)
        {
            return (x is null).CompareTo(y is null);
        }

        var (a, b) = (0, 0);
        while (a < x.Length && b < y.Length)
        {
            var bothCount = char.IsAsciiDigit(x[a]) && char.IsAsciiDigit(y[b]);
            var order = bothCount
                ? CompareNumbers(Digits(x, ref a), Digits(y, ref b))
                : char.ToUpperInvariant(x[a++]).CompareTo(char.ToUpperInvariant(y[b++]));
            if (order != 0)
            {
                return order;
            }
        }

        var byLength = (x.Length - a).CompareTo(y.Length - b);
        return byLength != 0 ? byLength : string.CompareOrdinal(x, y);
    }

    static ReadOnlySpan<char> Digits(string name, ref int at)
    {
        var start = at;
        while (at < name.Length && char.IsAsciiDigit(name[at]))
        {
            at++;
        }

        return name.AsSpan(start, at - start).TrimStart('0');
    }

    // Of two whole numbers without leading zeros the longer is the greater. No digit string is too long for this.
    static int CompareNumbers(ReadOnlySpan<char> a, ReadOnlySpan<char> b) =>
        a.Length != b.Length ? a.Length.CompareTo(b.Length) : a.SequenceCompareTo(b);
}
