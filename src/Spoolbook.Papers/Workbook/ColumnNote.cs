namespace Spoolbook.Papers.Workbook;

/// <summary>A column of a table.</summary>
/// <param name="Formulas">Its formulas as a spreadsheet shows them, each kind once; empty for a typed column.</param>
/// <param name="Typed">Whether some of its cells are typed.</param>
/// <param name="Codes">The codes in its cells, typed or computed.</param>
sealed record ColumnNote(
    string Head,
    CellFormat Format,
    IReadOnlyList<string> Formulas,
    bool Typed,
    Allowed? Allowed,
    IReadOnlyList<string> Codes,
    bool Summed,
    bool Bars,
    bool Aside
);
