using System.Globalization;
using System.Text.RegularExpressions;
using Spoolbook.Film;
using Spoolbook.Entry.Tables;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Entry.Takes;

/// <summary>Film as a cell tells it: how many frames, and how surely.</summary>
/// <param name="Exact">Frames, with the part of one that a rounded number of feet or metres leaves.</param>
readonly record struct CellFilm(Ratio Exact)
{
    /// <summary>The nearest whole frame.</summary>
    public Footage Nearest => new((long)Exact.Round());

    /// <summary>Whether so much film may be shown like this: a hundredth of a metre is more than a frame of 16 mm.</summary>
    public bool Agrees(Footage film)
    {
        var apart = Exact - new Ratio(film.Frames, 1);
        return apart < new Ratio(7, 10) && apart > new Ratio(-7, 10);
    }
}

/// <summary>Reads what cells tell of film: frames, feet and frames as the workbook's own number format shows them, metres, or any form that the roll files know.</summary>
sealed partial class FilmCells(Production production)
{
    const double Most = 100_000_000;

    Ratio FramesPerUnit => production.Units == LengthUnit.Metres ? production.Gauge.FramesPerMetre : production.Gauge.FramesPerFoot;

    string Unit => production.Units == LengthUnit.Metres ? "metres" : "feet";

    /// <summary>The film that a cell tells; null, with what is wrong, where it tells none.</summary>
    public CellFilm? Read(Cell cell, bool inFrames, Speed speed, out string message)
    {
        message = "";
        switch (cell.Kind)
        {
            case CellKind.Number when cell.Number is >= 0 and < Most:
                var number = Ratio.FromDecimal((decimal)cell.Number.Value);
                if (!inFrames)
                {
                    return new CellFilm(number * FramesPerUnit);
                }

                message = $"'{cell.Text}' is a part of a frame: frames are whole.";
                return number.IsWhole ? new CellFilm(number) : null;
            case CellKind.Words:
                return ReadWords(cell.Text.Trim(), inFrames, speed, ref message);
            default:
                message = $"'{cell.Text}' is no length of film.";
                return null;
        }
    }

    /// <summary>What to write in such a column.</summary>
    public string Help(bool inFrames) => inFrames
        ? "Write frames as a whole number, or a length with its unit: 1252, 31+12, 1252fr."
        : $"Write {Unit} as a number, or a length with its unit: 31.3, 31+12, 1252fr.";

    CellFilm? ReadWords(string text, bool inFrames, Speed speed, ref string message)
    {
        if (text is "–" or "-")
        {
            return new CellFilm(Ratio.Zero);
        }

        if (inFrames && Grouped().IsMatch(text))
        {
            return new CellFilm(new Ratio(long.Parse(string.Concat(text.Where(char.IsAsciiDigit)), CultureInfo.InvariantCulture), 1));
        }

        if (!inFrames && Fraction().Match(text) is { Success: true } shown)
        {
            var feet = shown.Groups["feet"].Success ? long.Parse(shown.Groups["feet"].Value, CultureInfo.InvariantCulture) : 0;
            var over = new Ratio(long.Parse(shown.Groups["part"].Value, CultureInfo.InvariantCulture), long.Parse(shown.Groups["of"].Value, CultureInfo.InvariantCulture));
            return new CellFilm((feet + over) * FramesPerUnit);
        }

        if (!inFrames && CellNumbers.Decimal(text) is { } number)
        {
            return new CellFilm(number * FramesPerUnit);
        }

        var parsed = FilmLength.Parse(text, production.Gauge);
        if (parsed.TryGet(out var length))
        {
            return new CellFilm(new Ratio(length.In(production.Gauge, speed).Frames, 1));
        }

        message = parsed.Advice.Length > 0 ? $"{char.ToUpperInvariant(parsed.Advice[0])}{parsed.Advice[1..]}." : $"'{text}' is no length of film.";
        return null;
    }

    // As spreadsheets show thousands, with a comma, a point, an apostrophe or a blank.
    [GeneratedRegex(@"^[0-9]{1,9}$|^[0-9]{1,3}([,.'’\u00A0\u202F ][0-9]{3}){1,2}$", RegexOptions.ExplicitCapture)]
    private static partial Regex Grouped();

    // 31 12/40, as the workbook's number format shows feet and frames.
    [GeneratedRegex(@"^((?<feet>[0-9]{1,6})\s+)?(?<part>[0-9]{1,4})\s*/\s*(?<of>[1-9][0-9]{0,3})$", RegexOptions.ExplicitCapture)]
    private static partial Regex Fraction();
}

/// <summary>Numbers as spreadsheets of several languages show them.</summary>
static partial class CellNumbers
{
    /// <summary>A number with a decimal point or comma, and thousands set off or not; null for none, and for one that can be read in two ways.</summary>
    public static Ratio? Decimal(string text)
    {
        var plain = text.Replace("\u00A0", "", StringComparison.Ordinal).Replace("\u202F", "", StringComparison.Ordinal).Trim();
        var match = Number().Match(plain);
        if (!match.Success)
        {
            return null;
        }

        var whole = string.Concat(match.Groups["whole"].Value.Where(char.IsAsciiDigit));
        return decimal.TryParse($"{whole}.{match.Groups["part"].Value}0", NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) ? Ratio.FromDecimal(number) : null;
    }

    // 9.5, 9,50 and 1,234.50; but not 1,234, which is one thing in one country and another in the next.
    [GeneratedRegex(@"^(?<whole>[0-9]{1,3}(,[0-9]{3})+)\.(?<part>[0-9]{1,9})$|^(?<whole>[0-9]{1,3}(\.[0-9]{3})+),(?<part>[0-9]{1,9})$|^(?<whole>[0-9]{1,9})$|^(?<whole>[0-9]{1,9})\.(?<part>[0-9]{1,9})$|^(?<whole>[0-9]{1,9}),(?<part>[0-9]{1,2}|[0-9]{4,9})$|^(?<whole>0),(?<part>[0-9]{3})$", RegexOptions.ExplicitCapture)]
    private static partial Regex Number();
}
