namespace Spoolbook.Film;

/// <summary>An exact value rounded for print, and the remainder.</summary>
/// <param name="Exact">The value before rounding.</param>
/// <param name="Places">Decimals printed, 0 or more.</param>
public readonly record struct Rounded(Ratio Exact, int Places)
{
    /// <summary>The printed number, a half rounded away from zero.</summary>
    public string Text => Exact.ToText(Places);

    /// <summary>The exact value less the printed one; zero where rounding lost nothing.</summary>
    public Ratio Remainder => Exact - Printed;

    /// <summary>Whether rounding lost nothing.</summary>
    public bool IsExact => Remainder.Sign == 0;

    Ratio Printed
    {
        get
        {
            var magnitude = DecimalText.Read(Text.TrimStart('-'));
            return Text.StartsWith('-') ? -magnitude : magnitude;
        }
    }

    /// <summary>The printed number, with <c>≈</c> before it where rounding lost something.</summary>
    public override string ToString() => IsExact ? Text : "≈" + Text;
}
