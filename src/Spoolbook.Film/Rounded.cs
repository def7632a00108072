namespace Spoolbook.Film;

/// <summary>An exact value rounded for print, and what the rounding left over: 0.1 m is 0.33 ft and 0.00 over.</summary>
/// <param name="Exact">The value before rounding.</param>
/// <param name="Places">Decimals printed, 0 or more.</param>
public readonly record struct Rounded(Ratio Exact, int Places)
{
    /// <summary>The printed number, a half rounded away from zero.</summary>
    public string Text => Exact.ToText(Places);

    /// <summary>The exact value less the printed one; zero where nothing was lost.</summary>
    public Ratio Remainder => Exact - Printed;

    /// <summary>Whether the printed number is the whole truth.</summary>
    public bool IsExact => Remainder.Sign == 0;

    Ratio Printed
    {
        get
        {
            var magnitude = DecimalText.Read(Text.TrimStart('-'));
            return Text.StartsWith('-') ? -magnitude : magnitude;
        }
    }

    /// <summary>The printed number, with <c>≈</c> before it where something was lost.</summary>
    public override string ToString() => IsExact ? Text : "≈" + Text;
}
