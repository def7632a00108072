namespace Spoolbook.Papers.Workbook;

/// <summary>
/// What was written into a workbook, for the page of reference: taken down while it is written, so that the page cannot say something else.
/// </summary>
sealed class WorkbookNotes
{
    public List<SheetNote> Sheets { get; } = [];

    /// <summary>What the sheet without a table is called.</summary>
    public string SummaryCalled { get; set; } = "";

    public List<LineNote> Summary { get; } = [];
}
