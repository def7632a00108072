namespace Spoolbook.Film;

/// <summary>The ways to write a distance.</summary>
static class DistanceForm
{
    // Twelve digits hold any real distance, and stop a slip of the key from turning into a huge computation.
    const int LongestNumber = 12;

    static readonly string[] _between = ["-", "–", "—", "/", ">", "→", "..", " to ", " bis "];

    public static Parsed<Distance, DistanceFault> Read(string text)
    {
        var written = text.Trim();
        if (written is "inf" or "infinity" or "∞")
        {
            return Distance.Infinity;
        }

        return written switch
        {
            "" => Failed(DistanceFault.Empty, text),
            _ when written.StartsWith('-') => Failed(DistanceFault.Negative, text),
            _ when written.Contains(',', StringComparison.Ordinal) => Failed(DistanceFault.DecimalComma, text),
            _ when DecimalText.TryRead(written, LongestNumber, out _) => Failed(DistanceFault.NoUnit, text),
            _ when IsTwo(written) => Failed(DistanceFault.TwoDistances, text),
            _ => ReadMeasures(written, text),
        };
    }

    // The first may leave its unit to the second.
    static bool IsTwo(string written) =>
        _between.Any(between =>
            written.Split(between) is [var from, var to]
            && Read(to).Succeeded
            && (Read(from).Succeeded || DecimalText.TryRead(from.Trim(), LongestNumber, out _))
        );

    /// <summary>One measure, or feet followed by inches.</summary>
    static Parsed<Distance, DistanceFault> ReadMeasures(string written, string text)
    {
        var endOfFirst = AfterUnit(written);
        if (Millimetres(written[..endOfFirst], out var unit) is not { } first)
        {
            return Failed(DistanceFault.NotADistance, text);
        }

        var rest = written[endOfFirst..];
        if (rest.Length == 0)
        {
            return new Distance(first, false) { Written = Spaced(written) };
        }

        if (!IsFeet(unit) || Millimetres(rest.TrimStart(), out var second) is not { } inches || second != "in")
        {
            return Failed(DistanceFault.NotADistance, text);
        }

        return inches >= Length.MillimetresPerFoot
            ? Failed(DistanceFault.InchesMakeAFoot, text)
            : new Distance(first + inches, false) { Written = Spaced(written) };
    }

    // Digits, a space, the unit, however it was typed.
    static string Spaced(string written)
    {
        var text = new System.Text.StringBuilder();
        foreach (var letter in written.Where(l => l != ' '))
        {
            if (text.Length > 0 && char.IsAsciiLetter(letter) != char.IsAsciiLetter(text[^1]))
            {
                text.Append(' ');
            }

            text.Append(letter);
        }

        return text.ToString();
    }

    /// <summary>Where the first number and its unit end.</summary>
    static int AfterUnit(string written)
    {
        var at = 0;
        while (at < written.Length && !char.IsAsciiLetter(written[at]))
        {
            at++;
        }

        while (at < written.Length && char.IsAsciiLetter(written[at]))
        {
            at++;
        }

        return at;
    }

    static Ratio? Millimetres(string measure, out string unit)
    {
        var letters = measure.Length;
        while (letters > 0 && char.IsAsciiLetter(measure[letters - 1]))
        {
            letters--;
        }

        unit = measure[letters..];
        Ratio? each = unit switch
        {
            _ when IsFeet(unit) => Length.MillimetresPerFoot,
            "in" => Length.MillimetresPerFoot / 12,
            "m" => 1000,
            "cm" => 10,
            "mm" => 1,
            _ => null,
        };
        return each is { } millimetres && DecimalText.TryRead(measure[..letters].TrimEnd(), LongestNumber, out var count)
            ? count * millimetres
            : null;
    }

    static bool IsFeet(string unit) => unit is "ft" or "feet" or "foot";

    static Parsed<Distance, DistanceFault> Failed(DistanceFault fault, string text) => new(fault, text);
}
