using System.Collections.Immutable;
using Spoolbook.Shoot;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Forecasts;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Papers.Ledger;

/// <summary>The input of the ledger and the workbook: the books, and the findings.</summary>
/// <param name="Made">The day of making, as on the papers.</param>
public sealed record LedgerSource(Books Books, ImmutableArray<Finding> Findings, ImmutableArray<Waived> Waived, DateOnly Made)
{
    /// <summary>The rolls.</summary>
    public ShootBook Shoot => Books.Shoot;

    /// <summary>The stock.</summary>
    public StockBook Stock => Books.Stock;

    /// <summary>The money.</summary>
    public CostBook Cost => Books.Cost;

    /// <summary>The film still needed.</summary>
    public FilmForecast Forecast => Books.Forecast;

    /// <summary>Whether there are errors, so that the papers are drafts.</summary>
    public bool IsDraft => Findings.Any(f => f.Level == Level.Error);
}
