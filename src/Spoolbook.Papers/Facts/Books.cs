using Spoolbook.Shoot.Accounts;

namespace Spoolbook.Papers.Facts;

/// <summary>The three books that papers are printed from: each kept once, and read by every paper.</summary>
public sealed record Books(ShootBook Shoot, StockBook Stock, CostBook Cost)
{
    /// <summary>The stock and the cost that follow from a shoot.</summary>
    public static Books Of(ShootBook shoot) => new(shoot, StockBook.Keep(shoot), CostBook.Keep(shoot));
}
