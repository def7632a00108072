namespace Spoolbook.Papers.Workbook;

/// <summary>A column of a table.</summary>
/// <param name="Formulas">Its formulas as a spreadsheet shows them, each kind once; empty where it is typed.</param>
/// <param name="Typed">Whether some of its cells are typed.</param>
/// <param name="Codes">The codes that its cells hold or come to.</param>
sealed record ColumnNote(
    string Head,
    CellFormat Format,
    IReadOnlyList<string> Formulas,
    bool Typed,
    Allowed? Allowed,
    IReadOnlyList<string> Codes,
    bool Summed,
    bool Bars
);
