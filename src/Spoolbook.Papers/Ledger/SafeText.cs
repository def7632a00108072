using System.Text;
using Spoolbook.Shoot.Texts;

namespace Spoolbook.Papers.Ledger;

/// <summary>Makes words safe for XML and JSON.</summary>
static class SafeText
{
    /// <summary>The words with control characters and lone surrogates replaced, cut to the length of a cell.</summary>
    public static string Of(string words, int most = int.MaxValue)
    {
        var clean = new StringBuilder(Math.Min(words.Length, most));
        foreach (var rune in words.EnumerateRunes())
        {
            var shown = IsHeld(rune) ? rune : Rune.ReplacementChar;
            if (clean.Length + shown.Utf16SequenceLength > most)
            {
                break;
            }

            clean.Append(shown.ToString());
        }

        return clean.ToString();
    }

    static bool IsHeld(Rune rune) => rune.Value != '\r' && TextCharacters.IsAllowed(rune.Value);
}
