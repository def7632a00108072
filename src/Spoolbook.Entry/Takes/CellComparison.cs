using System.Globalization;
using System.Text;
using Spoolbook.Entry.Tables;
using Spoolbook.Film;

namespace Spoolbook.Entry.Takes;

/// <summary>Whether a cell still shows what a record says.</summary>
static class CellComparison
{
    // The most characters a cell can hold.
    const int Most = 32767;

    // On a lens's scale, and in our own table.
    const string Infinity = "∞";

    /// <summary>Takes a value out, because an empty cell changes nothing.</summary>
    public const string Nothing = "-";

    public static bool Same(string cell, string? value) => Shown(cell) == Shown(value ?? "");

    public static bool Same(string cell, Stop? stop) =>
        Shown(cell) == (stop?.ToString() ?? "")
        || (
            stop is { } set && Stop.Parse(cell).TryGet(out var written) && written.Mark == set.Mark && Math.Abs(written.Av - set.Av) < 1e-6
        );

    public static bool Same(string cell, Distance? focus) =>
        Shown(cell)
            == (
                focus is { } at
                    ? at.IsInfinity
                        ? Infinity
                        : at.Written ?? ""
                    : ""
            )
        || (focus is { } known && Distance.Parse(FocusOf(cell)).TryGet(out var written) && written == known);

    /// <summary>A focus in a cell as a roll file writes it.</summary>
    public static string FocusOf(string cell) => cell.Trim() == Infinity ? "inf" : cell.Trim();

    public static bool Same(Cell cell, Speed speed) =>
        NumberOf(cell) is { } number
            ? Math.Abs(number - speed.FramesPerSecond.ToDouble()) < 0.0005
            : Speed.Parse(cell.Text).TryGet(out var written) && written == speed;

    public static double? NumberOf(Cell cell) => cell.Number ?? CellNumbers.Decimal(cell.Text.Trim())?.ToDouble();

    public static int? WholeOf(Cell cell) =>
        int.TryParse(cell.Text.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var whole) ? whole : null;

    /// <summary>The day in a cell: a date, or a spreadsheet's number for one.</summary>
    public static DateOnly? DayOf(Cell cell) =>
        cell.Kind switch
        {
            CellKind.Date
            or CellKind.Words
                when DateOnly.TryParseExact(
                    cell.Text.Trim(),
                    "yyyy-MM-dd",
                    CultureInfo.InvariantCulture,
                    DateTimeStyles.None,
                    out var day
                ) => day,
            CellKind.Number when cell.Number is >= 32874 and < 73051 && Math.Floor(cell.Number.Value) == cell.Number.Value =>
                DateOnly.FromDateTime(DateTime.FromOADate(cell.Number.Value)),
            _ => null,
        };

    // A cell shows a character it cannot hold as the replacement character.
    static string Shown(string words)
    {
        var shown = new StringBuilder(words.Length);
        foreach (var rune in words.Replace("\r\n", "\n", StringComparison.Ordinal).EnumerateRunes())
        {
            var held =
                rune.Value is not (0xFFFE or 0xFFFF)
                && (Rune.GetUnicodeCategory(rune) != UnicodeCategory.Control || rune.Value is '\n' or '\t');
            shown.Append((held ? rune : Rune.ReplacementChar).ToString());
        }

        var text = shown.ToString();
        return (text.Length > Most ? text[..Most] : text).Trim();
    }
}
