using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Readers;

/// <summary>Rolls in the order people count them: R2 before R10.</summary>
static class NaturalOrder
{
    public static readonly IComparer<Roll> ByName = Comparer<Roll>.Create((a, b) => Compare(a, b));

    static int Compare(Roll a, Roll b)
    {
        var byName = CompareNames(a.Name.Value, b.Name.Value);
        return byName != 0 ? byName : string.CompareOrdinal(a.Place.File, b.Place.File);
    }

    /// <summary>Compares names, each run of digits as one number.</summary>
    public static int CompareNames(string a, string b)
    {
        var (i, j) = (0, 0);
        while (i < a.Length && j < b.Length)
        {
            var (x, y) = (Piece(a, i), Piece(b, j));
            var order = char.IsAsciiDigit(x[0]) && char.IsAsciiDigit(y[0]) ? CompareNumbers(x, y) : string.CompareOrdinal(x, y);
            if (order != 0)
            {
                return order;
            }

            (i, j) = (i + x.Length, j + y.Length);
        }

        // R02 and R2 are equal up to here, and still need a fixed order.
        var rest = (a.Length - i).CompareTo(b.Length - j);
        return rest != 0 ? rest : string.CompareOrdinal(a, b);
    }

    static string Piece(string text, int from)
    {
        var to = from + 1;
        while (to < text.Length && char.IsAsciiDigit(text[from]) && char.IsAsciiDigit(text[to]))
        {
            to++;
        }

        return text[from..to];
    }

    static int CompareNumbers(string a, string b)
    {
        var (x, y) = (a.TrimStart('0'), b.TrimStart('0'));
        return x.Length != y.Length ? x.Length.CompareTo(y.Length) : string.CompareOrdinal(x, y);
    }
}
