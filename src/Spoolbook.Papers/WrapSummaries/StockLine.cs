namespace Spoolbook.Papers.WrapSummaries;

/// <summary>A lot of stock in one line.</summary>
public sealed record StockLine(
    string Lot,
    string Stock,
    string Received,
    string Loaded,
    string Gone,
    string Left,
    string LeftLength,
    string ShortEnds,
    string Expires,
    bool Practice
);
