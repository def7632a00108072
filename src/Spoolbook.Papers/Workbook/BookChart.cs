namespace Spoolbook.Papers.Workbook;

/// <summary>A chart of the first sheet, over columns of tables.</summary>
/// <param name="IsBars">Bars from the left, with their values; else lines.</param>
/// <param name="Unit">The unit of its values.</param>
sealed record BookChart(ChartPlace Place, string Name, bool IsBars, string Unit, ChartColumn Labels, IReadOnlyList<ChartColumn> Series);
