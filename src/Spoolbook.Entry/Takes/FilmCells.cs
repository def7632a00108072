using System.Globalization;
using System.Text.RegularExpressions;
using Spoolbook.Entry.Tables;
using Spoolbook.Film;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Entry.Takes;

/// <summary>
/// Reads lengths of film in cells: frames, feet and frames in the workbook's own number format, metres, or any form of
/// the roll files.
/// </summary>
sealed partial class FilmCells(Production production)
{
    const double Most = 100_000_000;

    Ratio FramesPerUnit => production.Units == LengthUnit.Metres ? production.Gauge.FramesPerMetre : production.Gauge.FramesPerFoot;

    string Unit => production.Units == LengthUnit.Metres ? "metres" : "feet";

    /// <summary>The film in a cell; null, with what is wrong, where there is none.</summary>
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

    public string Help(bool inFrames) =>
        inFrames
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
            var over = new Ratio(
                long.Parse(shown.Groups["part"].Value, CultureInfo.InvariantCulture),
                long.Parse(shown.Groups["of"].Value, CultureInfo.InvariantCulture)
            );
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

        message = RowParser.InWords(parsed.Slip);
        return null;
    }

    // Spreadsheets separate thousands with a comma, a point, an apostrophe or a blank.
    [GeneratedRegex(@"^[0-9]{1,9}$|^[0-9]{1,3}([,.'’\u00A0\u202F ][0-9]{3}){1,2}$", RegexOptions.ExplicitCapture)]
    private static partial Regex Grouped();

    // 31 12/40, as the workbook's number format shows feet and frames.
    [GeneratedRegex(@"^((?<feet>[0-9]{1,6})\s+)?(?<part>[0-9]{1,4})\s*/\s*(?<of>[1-9][0-9]{0,3})$", RegexOptions.ExplicitCapture)]
    private static partial Regex Fraction();
}
