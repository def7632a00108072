using Spoolbook.Film;

namespace Spoolbook.Papers.Workbook;

/// <summary>
/// The contents of a cell: words, a number, a date, or a formula with its result. Words that a spreadsheet could take
/// for a formula stay words. <c>default</c> is an empty cell.
/// </summary>
readonly record struct CellValue
{
    /// <summary>Words; null in other cells.</summary>
    public string? Text { get; private init; }

    /// <summary>A number, or the result of a formula.</summary>
    public double? Number { get; private init; }

    /// <summary>A date or a moment.</summary>
    public DateTime? Moment { get; private init; }

    /// <summary>The formula, without its equals sign; null in other cells.</summary>
    public string? Formula { get; private init; }

    /// <summary>Whether it is empty.</summary>
    public bool IsEmpty => this == default;

    public static implicit operator CellValue(string? words) => string.IsNullOrEmpty(words) ? default : new() { Text = words };

    public static implicit operator CellValue(double? number) => new() { Number = number };

    public static implicit operator CellValue(long? number) => new() { Number = number };

    public static implicit operator CellValue(int? number) => new() { Number = number };

    public static implicit operator CellValue(decimal? number) => new() { Number = (double?)number };

    public static implicit operator CellValue(Ratio? number) => new() { Number = number?.ToDouble() };

    public static implicit operator CellValue(DateOnly? date) => new() { Moment = date?.ToDateTime(TimeOnly.MinValue) };

    public static implicit operator CellValue(DateTime? moment) => new() { Moment = moment };

    /// <summary>A formula, with the result that we computed for previewers.</summary>
    public static CellValue Calculated(string formula, double comesTo) => new() { Formula = formula, Number = comesTo };

    /// <summary>The same cell with other words, or with other words as result.</summary>
    public CellValue Saying(string words) => this with { Text = words };

    /// <summary>The same cell with its formula as in the file.</summary>
    public CellValue Spelt(string formula) => this with { Formula = formula };

    /// <summary>A formula with words as result, which may be empty.</summary>
    public static CellValue CalculatedWords(string formula, string comesTo) => new() { Formula = formula, Text = comesTo };
}
