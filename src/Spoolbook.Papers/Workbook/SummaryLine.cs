using Spoolbook.Film;

namespace Spoolbook.Papers.Workbook;

/// <summary>A line of the figures: its label, its figure, and a remark.</summary>
/// <param name="Value">The figure; of a length its frames.</param>
/// <param name="Name">The defined name of its cell, for formulas; null for none.</param>
sealed record SummaryLine(string Label, CellValue Value, CellFormat Format, string Remark, string? Name = null)
{
    /// <summary>Of a length: the film; null where it is not known.</summary>
    public Footage? Film { get; init; }

    /// <summary>Of a length: the formula of the whole frames that are shown, if it is not its name.</summary>
    public string? Shows { get; init; }

    /// <summary>The same in metres, as its account prints it; null for the nearest centimetre.</summary>
    public long? Centimetres { get; init; }

    /// <summary>A length, counted in frames under its name.</summary>
    public static SummaryLine Length(string label, string formula, Footage film, string remark, string name, long? centimetres = null) =>
        new(label, CellValue.Calculated(formula, film.Frames), CellFormat.Length, remark, name) { Film = film, Centimetres = centimetres };
}
