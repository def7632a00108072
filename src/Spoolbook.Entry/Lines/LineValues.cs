using System.Globalization;
using Spoolbook.Reading.Editing;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Entry.Lines;

/// <summary>Turns what a line says into what the file says.</summary>
static class LineValues
{
    const int LongestNumber = 12;

    /// <summary>A value without quotation marks, as the file has it.</summary>
    public static string Written(EntryKey key, string text, LineContext context) =>
        key.Kind switch
        {
            ValueKind.Length => Length(text, context),
            ValueKind.Frames => IsNumber(text) && !text.Contains('.', StringComparison.Ordinal) ? text + "fr" : text,
            ValueKind.Speed => Speed(text) ?? text,
            ValueKind.Stop => Stop(text) ?? text,
            ValueKind.Distance => Distance(text),
            ValueKind.Clock => Clock(text) ?? text,
            ValueKind.Choice => Word(key, text),
            _ => text,
        };

    /// <summary>A length: a bare number is in the production's units, as the counter reads.</summary>
    public static string Length(string text, LineContext context) =>
        !IsNumber(text) ? text
        : context.Units == LengthUnit.Metres ? text + "m"
        : text.Contains('.', StringComparison.Ordinal) ? text + "ft"
        : text + "+00";

    /// <summary>The speed of <c>16fps</c>; null for any other text.</summary>
    public static string? Speed(string text) =>
        text.Length > 3 && text.EndsWith("fps", StringComparison.OrdinalIgnoreCase) && char.IsAsciiDigit(text[0]) ? text[..^3] : null;

    /// <summary>The stop of <c>f8</c>, <c>f/8</c> or <c>t2</c>; null for any other text.</summary>
    public static string? Stop(string text)
    {
        if (text.Length < 2 || text[0] is not ('f' or 'F' or 't' or 'T'))
        {
            return null;
        }

        var isT = text[0] is 't' or 'T';
        var number = text[1] == '/' && !isT ? text[2..] : text[1..];
        return number.Length == 0 || !char.IsAsciiDigit(number[0]) ? null
            : isT ? "T" + number
            : number;
    }

    /// <summary>The time of <c>9:15</c>, with two figures each; null for any other text.</summary>
    public static string? Clock(string text) =>
        TimeOnly.TryParseExact(text, "H:mm", CultureInfo.InvariantCulture, DateTimeStyles.None, out var time)
            ? time.ToString("HH:mm", CultureInfo.InvariantCulture)
            : null;

    public static DateOnly? Date(string text) =>
        DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) ? day : null;

    public static string Text(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    public static bool IsNumber(string text)
    {
        var points = 0;
        foreach (var c in text)
        {
            points += c == '.' ? 1 : 0;
            if (c != '.' && !char.IsAsciiDigit(c))
            {
                return false;
            }
        }

        return text.Length is > 0 and <= LongestNumber && points <= 1 && text[0] != '.' && text[^1] != '.';
    }

    /// <summary>Whether a text is a number followed by one of the units.</summary>
    public static bool IsMeasure(string text, params ReadOnlySpan<string> units)
    {
        foreach (var unit in units)
        {
            if (text.EndsWith(unit, StringComparison.Ordinal) && IsNumber(text[..^unit.Length]))
            {
                return true;
            }
        }

        return false;
    }

    public static bool IsFeetAndFrames(string text) =>
        text.IndexOf('+', StringComparison.Ordinal) is > 0 and var plus && IsWhole(text[..plus]) && IsWhole(text[(plus + 1)..]);

    public static bool IsWhole(string text) => IsNumber(text) && !text.Contains('.', StringComparison.Ordinal);

    /// <summary>A distance with a blank between its feet and inches.</summary>
    public static string Distance(string text)
    {
        var feet = text.IndexOf("ft", StringComparison.Ordinal);
        return feet > 0 && feet + 2 < text.Length && char.IsAsciiDigit(text[feet + 2])
            ? $"{text[..(feet + 2)]} {text[(feet + 2)..]}"
            : text;
    }

    static string Word(EntryKey key, string text)
    {
        if (key.Name == TakeKeyNames.Mark)
        {
            return Mark(text) ?? text;
        }

        foreach (var word in key.Words)
        {
            if (word.Equals(text, StringComparison.OrdinalIgnoreCase))
            {
                return word;
            }
        }

        return text;
    }

    /// <summary>The mark that a word or a letter means, as the file writes it; null for any other text.</summary>
    public static string? Mark(string text) =>
        TakeKeyNames.MarkOf(text) is { } mark ? TakeKeyNames.Of(mark)
        : text is "t" or "T" ? TakeKeyNames.Of(Shoot.Records.Mark.Test)
        : null;
}
