using System.Globalization;
using System.Text;

namespace Spoolbook.Shoot.Texts;

/// <summary>
/// The characters that a text may hold, decided once, before any paper, terminal, page, workbook or ledger gets it. Letters and
/// signs of every script may, with their marks and joiners; what only steers a terminal, turns a line round, or is no character
/// at all may not.
/// </summary>
public static class TextCharacters
{
    /// <summary>The characters that steer the direction of a text, by name, as the Unicode Standard 16.0 calls them.</summary>
    static readonly (int Code, string Name)[] Directions =
    [
        (0x200E, "a left-to-right mark"),
        (0x200F, "a right-to-left mark"),
        (0x202A, "a left-to-right embedding"),
        (0x202B, "a right-to-left embedding"),
        (0x202C, "the end of a turned direction"),
        (0x202D, "a left-to-right override"),
        (0x202E, "a right-to-left override"),
        (0x2066, "a left-to-right isolate"),
        (0x2067, "a right-to-left isolate"),
        (0x2068, "a first strong isolate"),
        (0x2069, "the end of an isolate"),
    ];

    static readonly (int Code, string Name)[] Controls =
    [
        (0x00, "a null character"),
        (0x07, "a bell"),
        (0x08, "a backspace"),
        (0x0B, "a vertical tab"),
        (0x0C, "a form feed"),
        (0x1B, "an escape character"),
        (0x7F, "a delete character"),
        (0x85, "a next-line character"),
    ];

    /// <summary>Whether a text may hold the character of this number; half of a surrogate pair it may not.</summary>
    public static bool IsAllowed(int code) =>
        code switch
        {
            '\t' or '\n' or '\r' => true,
            < 0x20 or (>= 0x7F and < 0xA0) => false,
            0x200E or 0x200F or (>= 0x202A and <= 0x202E) or (>= 0x2066 and <= 0x2069) => false,
            (>= 0xD800 and <= 0xDFFF) or (>= 0xFDD0 and <= 0xFDEF) => false,
            _ => (code & 0xFFFE) != 0xFFFE,
        };

    /// <summary>Whether a text may hold every character of this one.</summary>
    public static bool AreAllowed(string text) => FirstRefused(text) is null;

    /// <summary>The number of the first character that a text may not hold; null where there is none.</summary>
    public static int? FirstRefused(string text) => IndexOfRefused(text) is var at and >= 0 ? First(text.AsSpan(at)).Code : null;

    /// <summary>Where the first character is that a text may not hold; -1 where there is none.</summary>
    public static int IndexOfRefused(string text)
    {
        for (var at = 0; at < text.Length;)
        {
            var (code, length) = First(text.AsSpan(at));
            if (!IsAllowed(code))
            {
                return at;
            }

            at += length;
        }

        return -1;
    }

    /// <summary>The text without the characters that it may not hold.</summary>
    public static string Without(string text)
    {
        if (AreAllowed(text))
        {
            return text;
        }

        var kept = new StringBuilder(text.Length);
        for (var at = 0; at < text.Length;)
        {
            var (code, length) = First(text.AsSpan(at));
            kept.Append(IsAllowed(code) ? text.AsSpan(at, length) : []);
            at += length;
        }

        return kept.ToString();
    }

    /// <summary>The text on one line, with the number of a character in place of one that a terminal would obey: <c>\u001B</c>.</summary>
    public static string Escaped(string text)
    {
        var shown = new StringBuilder(text.Length);
        for (var at = 0; at < text.Length;)
        {
            var (code, length) = First(text.AsSpan(at));
            if (IsAllowed(code) && code is not ('\t' or '\n' or '\r'))
            {
                shown.Append(text, at, length);
            }
            else
            {
                shown
                    .Append(code > 0xFFFF ? @"\U" : @"\u")
                    .Append(code.ToString(code > 0xFFFF ? "X8" : "X4", CultureInfo.InvariantCulture));
            }

            at += length;
        }

        return shown.ToString();
    }

    /// <summary>The number by which any table of characters has it: <c>U+001B</c>.</summary>
    public static string Number(int code) => "U+" + code.ToString("X4", CultureInfo.InvariantCulture);

    /// <summary>What a character that no text may hold is, in words: <c>an escape character</c>.</summary>
    public static string Name(int code) =>
        Controls.Concat(Directions).FirstOrDefault(c => c.Code == code).Name
        ?? (
            code is >= 0xD800 and <= 0xDFFF ? "half of a character"
            : code < 0xA0 ? "a control character"
            : "no character at all"
        );

    /// <summary>Whether a character only says in which direction a text runs.</summary>
    public static bool IsDirection(int code) => Directions.Any(d => d.Code == code);

    /// <summary>The number of the first character of a text, and its length in UTF-16.</summary>
    public static (int Code, int Length) First(ReadOnlySpan<char> text) =>
        text.Length > 1 && char.IsSurrogatePair(text[0], text[1]) ? (char.ConvertToUtf32(text[0], text[1]), 2) : (text[0], 1);
}
