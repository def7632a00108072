namespace Spoolbook.Papers.WrapSummaries;

/// <summary>A line of the stock log.</summary>
public sealed record StockMoveLine(string Date, string What, string Stock, string Length, string Remark, bool Counts);
