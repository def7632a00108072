namespace Spoolbook.Papers.Workbook;

/// <summary>Where a chart is on its sheet: between rows, counted from 0, and from the first column on.</summary>
sealed record ChartPlace(int From, int To, int Columns);
