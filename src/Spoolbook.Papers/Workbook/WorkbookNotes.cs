namespace Spoolbook.Papers.Workbook;

/// <summary>What was written into a workbook, for the page of reference: taken down while it is written, so that the page cannot say something else.</summary>
sealed class WorkbookNotes
{
    public List<SheetNote> Sheets { get; } = [];

    /// <summary>What the sheet without a table is called.</summary>
    public string SummaryCalled { get; set; } = "";

    public List<LineNote> Summary { get; } = [];
}

/// <summary>A sheet that is a table.</summary>
sealed record SheetNote(string Name, string Table, string About, int PagesWide, IReadOnlyList<ColumnNote> Columns);

/// <summary>A column of a table.</summary>
/// <param name="Formulas">Its formulas as a spreadsheet shows them, each kind once; empty where it is typed.</param>
/// <param name="Typed">Whether some of its cells are typed.</param>
/// <param name="Codes">The codes that its cells hold or come to.</param>
sealed record ColumnNote(string Head, CellFormat Format, IReadOnlyList<string> Formulas, bool Typed, Allowed? Allowed, IReadOnlyList<string> Codes, bool Summed, bool Bars);

/// <summary>A line of the summary.</summary>
/// <param name="Formula">Null where the figure is typed.</param>
/// <param name="Name">The defined name of the figure's cell; null where it has none.</param>
sealed record LineNote(string Label, string? Formula, CellFormat Format, string? Name);
