using Spoolbook.Film;

namespace Spoolbook.Shoot.Accounts;

/// <summary>
/// One line of the cost: a quantity at a rate. The amount is the exact product, or the minimum where that is
/// more, rounded once to cents, a half away from zero.
/// </summary>
public sealed record CostLine
{
    /// <summary>How firm the cost is.</summary>
    public required CostStage Stage { get; init; }

    /// <summary>What it is for.</summary>
    public required CostKind Kind { get; init; }

    /// <summary>The consignment that it is billed with, by number; null where it is on no order.</summary>
    public int? Consignment { get; init; }

    /// <summary>The roll, by name; null where the line is not about one roll.</summary>
    public string? Roll { get; init; }

    /// <summary>The lot of raw stock, by name; null where the line is not about one.</summary>
    public string? Lot { get; init; }

    /// <summary>The process, or the service, as written; null where the kind says it all or none was written.</summary>
    public string? Name { get; init; }

    /// <summary>The film that a rate by length applies to; null in other lines.</summary>
    public Footage? Film { get; init; }

    /// <summary>How many of the unit, exact.</summary>
    public required Ratio Quantity { get; init; }

    /// <summary>What the quantity counts.</summary>
    public required CostUnit Unit { get; init; }

    /// <summary>Price of one; for tax, the rate: 0.19. Null where none was written.</summary>
    public decimal? Rate { get; init; }

    /// <summary>The least that the line costs; null where there is none.</summary>
    public decimal? Minimum { get; init; }

    /// <summary>The amount in whole cents; null while it is open. Never zero because a rate is missing.</summary>
    public decimal? Amount { get; init; }

    /// <summary>Why there is no amount; null where there is one.</summary>
    public OpenReason? Open { get; init; }

    /// <summary>Whether the line costs the minimum.</summary>
    public bool AtMinimum =>
        Amount is not null && Rate is { } rate && Minimum is { } least && Quantity * Ratio.FromDecimal(rate) < Ratio.FromDecimal(least);

    /// <summary>This line with its amount, or with the reason why it has none.</summary>
    internal CostLine Reckoned()
    {
        if (Rate is not { } rate)
        {
            return this with { Open = Open ?? OpenReason.NoRate };
        }

        var exact = Quantity * Ratio.FromDecimal(rate);
        if (Minimum is { } least && exact < Ratio.FromDecimal(least))
        {
            exact = Ratio.FromDecimal(least);
        }

        return CostBook.ToCents(exact) is { } amount ? this with { Amount = amount } : this with { Open = OpenReason.OutOfRange };
    }
}
