using System.Globalization;
using System.Text;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Cans;

/// <summary>
/// The code that identifies one can: the production's code, the roll, and a check character for reading it over the
/// telephone. Written <c>HERON/R03/5</c>, the same on the label and in its QR code.
/// </summary>
/// <param name="Production">The production's code.</param>
/// <param name="Roll">The roll's name.</param>
public sealed record CanCode(string Production, string Roll)
{
    /// <summary>The code of a roll's can.</summary>
    public static CanCode Of(Production production, Roll roll) => new(production.Code.Value, roll.Name.Value);

    /// <summary>
    /// The check character (ISO/IEC 7064, MOD 37,36) over production and roll. Ignores blanks, hyphens and slashes, as
    /// other codes of this kind do. Any other character beyond A to Z and 0 to 9 counts by its hexadecimal Unicode
    /// number.
    /// </summary>
    public char Check => CheckCharacter.Compute(Spelt(Production + Roll));

    /// <summary>The whole code: production, roll, check character.</summary>
    public override string ToString() => $"{Production}/{Roll}/{Check}";

    static string Spelt(string text)
    {
        var spelt = new StringBuilder();
        foreach (var rune in text.ToUpperInvariant().EnumerateRunes())
        {
            if (rune.IsAscii && Rune.IsLetterOrDigit(rune))
            {
                spelt.Append((char)rune.Value);
            }
            else if (rune.Value is not ('-' or '/') && !Rune.IsWhiteSpace(rune))
            {
                spelt.Append(rune.Value.ToString("X4", CultureInfo.InvariantCulture));
            }
        }

        return spelt.ToString();
    }
}
