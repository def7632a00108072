namespace Spoolbook.Film;

/// <summary>The ways to write a number of stops.</summary>
static class StopsForm
{
    const int LongestNumber = 9;
    const double Most = 30;

    public static Parsed<double, StopsFault> Read(string text)
    {
        var written = text.Trim();
        var magnitude = written.StartsWith('-') || written.StartsWith('+') ? written[1..].TrimStart() : written;
        if (magnitude.Length == 0)
        {
            return Failed(StopsFault.Empty, text);
        }

        if (magnitude.Contains(',', StringComparison.Ordinal))
        {
            return Failed(StopsFault.DecimalComma, text);
        }

        var amount = Sum(magnitude, out var overZero);
        return amount switch
        {
            null => Failed(overZero ? StopsFault.OverZero : StopsFault.NotAnAmount, text),
            > Most => Failed(StopsFault.TooMany, text),
            { } stops => written.StartsWith('-') ? -stops : stops,
        };
    }

    /// <summary>A number, a fraction, or a whole number followed by a fraction.</summary>
    static double? Sum(string magnitude, out bool overZero)
    {
        overZero = false;
        var slash = magnitude.IndexOf('/', StringComparison.Ordinal);
        if (slash < 0)
        {
            return Number(magnitude);
        }

        var above = magnitude[..slash].TrimEnd();
        var gap = above.LastIndexOf(' ');
        var whole =
            gap < 0 ? Ratio.Zero
            : Number(above[..gap].TrimEnd(), out var read) ? read
            : null as Ratio?;
        if (
            whole is null
            || !Number(above[(gap + 1)..], out var numerator)
            || !Number(magnitude[(slash + 1)..].TrimStart(), out var denominator)
        )
        {
            return null;
        }

        overZero = denominator.Sign == 0;
        return overZero ? null : (whole.Value + (numerator / denominator)).ToDouble();
    }

    static double? Number(string digits) => Number(digits, out var value) ? value.ToDouble() : null;

    static bool Number(string digits, out Ratio value) => DecimalText.TryRead(digits, LongestNumber, out value);

    static Parsed<double, StopsFault> Failed(StopsFault fault, string text) => new(fault, text);
}
