using System.Globalization;
using Spoolbook.Reading.Files;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Printing;

/// <summary>The line of a finding, with a marker under the exact characters.</summary>
internal static class ExcerptPrinter
{
    const char Gap = '…';

    /// <summary>The gutter, the line and the marker: three lines of text; empty where the place has no line to show.</summary>
    public static IReadOnlyList<string> Of(string? line, Place place, int width, Ink ink)
    {
        if (line is null)
        {
            return [];
        }

        var number = place.Line.ToString(CultureInfo.InvariantCulture);
        var gutter = new string(' ', number.Length);
        var (text, start, length) = Crop(line, place.Column - 1, Math.Max(1, place.Length), Math.Max(30, width - number.Length - 4));
        // Not before: a finding shows a few words of a line, and thousands of findings may be about one long line.
        text = Plain.Text(text);
        var marker = new string(' ', Columns(text[..start])) + new string('^', Math.Max(1, Columns(text.Substring(start, length))));
        return [ink.Dim($" {gutter} |"), $"{ink.Dim($" {number} |")} {text}", $"{ink.Dim($" {gutter} |")} {ink.Red(marker)}"];
    }

    static (string Text, int Start, int Length) Crop(string line, int start, int length, int width)
    {
        start = WholeLetters.At(line, Math.Clamp(start, 0, line.Length));
        length = WholeLetters.At(line, start + Math.Min(length, line.Length - start)) - start;
        if (line.Length <= width)
        {
            return (line, start, length);
        }

        // A long line is cut to keep the marked characters, and what comes before them rather than after.
        var from = WholeLetters.At(line, Math.Max(0, Math.Min(start - (width / 3), line.Length - width + 1)));
        var to = Math.Max(start, WholeLetters.At(line, Math.Min(line.Length, from + width - 2)));
        length = Math.Min(length, Math.Max(0, to - start));
        var text = (from > 0 ? Gap.ToString() : "") + line[from..to] + (to < line.Length ? Gap.ToString() : "");
        return (text, start - from + (from > 0 ? 1 : 0), length);
    }

    // Combining marks take no column, a surrogate pair takes one.
    static int Columns(string text) =>
        text.Count(c =>
            char.GetUnicodeCategory(c) is not (UnicodeCategory.NonSpacingMark or UnicodeCategory.EnclosingMark) && !char.IsLowSurrogate(c)
        );
}
