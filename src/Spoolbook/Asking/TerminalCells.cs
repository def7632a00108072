using System.Globalization;
using System.Text;

namespace Spoolbook.Asking;

/// <summary>How much room text takes on a terminal.</summary>
internal static class TerminalCells
{
    const string AsPicture = "\ufe0f";

    // Unicode Standard Annex #11, East Asian Width: W and F, in round ranges. Pictures are two cells wide, as terminals draw them.
    static readonly (int From, int To)[] _wide =
    [
        (0x1100, 0x115F),
        (0x2E80, 0x303E),
        (0x3041, 0xA4CF),
        (0xA960, 0xA97F),
        (0xAC00, 0xD7A3),
        (0xF900, 0xFAFF),
        (0xFE30, 0xFE6F),
        (0xFF00, 0xFF60),
        (0xFFE0, 0xFFE6),
        (0x1F300, 0x1F64F),
        (0x1F680, 0x1F6FF),
        (0x1F900, 0x1F9FF),
        (0x20000, 0x3FFFD),
    ];

    /// <summary>The cells of a text.</summary>
    public static int Of(string text)
    {
        var cells = 0;
        var rest = text.AsSpan();
        while (rest.Length > 0)
        {
            var next = StringInfo.GetNextTextElementLength(rest);
            cells += OfElement(rest[..next]);
            rest = rest[next..];
        }

        return cells;
    }

    // An accent takes no room of its own.
    static int OfElement(ReadOnlySpan<char> element)
    {
        Rune.DecodeFromUtf16(element, out var first, out _);
        return Rune.GetUnicodeCategory(first) is UnicodeCategory.NonSpacingMark or UnicodeCategory.EnclosingMark or UnicodeCategory.Format
                ? 0
            : IsWide(first.Value) || element.EndsWith(AsPicture) ? 2
            : 1;
    }

    static bool IsWide(int rune)
    {
        foreach (var (from, to) in _wide)
        {
            if (rune >= from && rune <= to)
            {
                return true;
            }
        }

        return false;
    }
}
