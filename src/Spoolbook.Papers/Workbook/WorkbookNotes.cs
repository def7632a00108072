namespace Spoolbook.Papers.Workbook;

/// <summary>What was written into a workbook, noted while it is written, so that the reference page cannot differ from it.</summary>
sealed class WorkbookNotes
{
    public List<SheetNote> Sheets { get; } = [];

    /// <summary>The name of the sheet without a table.</summary>
    public string SummaryCalled { get; set; } = "";

    public List<LineNote> Summary { get; } = [];
}
