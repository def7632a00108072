using System.Collections.Immutable;
using System.Globalization;
using Spoolbook.Film;

namespace Spoolbook.Shoot.Accounts;

/// <summary>
/// What the shoot costs, line by line, in one currency. A line without a rate is open: it is listed, and is in no sum.
/// Totals are sums of rounded lines, so they add up in any order.
/// </summary>
/// <param name="Currency">The currency's code; null where no rates were written.</param>
/// <param name="Lines">Stock first, then the lab order, then what is committed; each by lot or roll in the production's order.</param>
public sealed record CostBook(string? Currency, ImmutableArray<CostLine> Lines)
{
    /// <summary>The most that one line can cost; beyond it a spreadsheet no longer holds every cent.</summary>
    public const decimal Most = 1_000_000_000_000m;

    /// <summary>The cost of a production: its stock, its lab order, and what is exposed and not yet ordered.</summary>
    internal static CostBook Keep(ShootBook book, StockBook stock)
    {
        var sendings = Sending.Of(book);
        return new CostBook(book.Production.Rates?.Currency.Value, CostReckoning.Lines(book, stock, sendings)) { Sendings = sendings };
    }

    /// <summary>The consignments that the lab's lines are billed with.</summary>
    public ImmutableArray<Sending> Sendings { get; private init; } = [];

    /// <summary>The consignment that a roll is billed with; null where it goes with none.</summary>
    public Sending? SendingOf(RollBook roll) => Sendings.FirstOrDefault(s => s.Rolls.Contains(roll));

    /// <summary>Lines without an amount.</summary>
    public IEnumerable<CostLine> Open => Lines.Where(l => l.Amount is null);

    /// <summary>Whether any line but tax has an amount. A sum of none means nothing, and neither does tax on none.</summary>
    public bool IsPriced => Lines.Any(l => l.Kind != CostKind.Tax && l.Amount is not null);

    /// <summary>The lines of the lab order: what is billed for the rolls that go to the lab.</summary>
    public IEnumerable<CostLine> Order => At(CostStage.Ordered);

    /// <summary>The lines of the order for one consignment.</summary>
    public IEnumerable<CostLine> OrderOf(Sending sending) => Order.Where(l => l.Consignment == sending.Number);

    /// <summary>The lines of one stage.</summary>
    public IEnumerable<CostLine> At(CostStage stage) => Lines.Where(l => l.Stage == stage);

    /// <summary>The sum of the priced lines of one stage, tax included.</summary>
    public decimal TotalAt(CostStage stage) => SumOf(At(stage));

    /// <summary>The lab order before tax.</summary>
    public decimal OrderBeforeTax => SumOf(Order.Where(l => l.Kind != CostKind.Tax));

    /// <summary>The lab order with tax.</summary>
    public decimal OrderTotal => TotalAt(CostStage.Ordered);

    /// <summary>What is ordered with consignments that have not gone yet, tax included; null where none of it has a price.</summary>
    public decimal? OrderNotSent
    {
        get
        {
            var lines = Sendings.Where(s => s.SentOn is null).SelectMany(OrderOf).ToList();
            return lines.Exists(l => l.Amount is not null) ? SumOf(lines) : null;
        }
    }

    /// <summary>What is spent: stock bought, and the orders that went out.</summary>
    public decimal Spent => ToDate - (OrderNotSent ?? 0m);

    /// <summary>Cost to date: stock bought and the lab order.</summary>
    public decimal ToDate => TotalAt(CostStage.Bought) + OrderTotal;

    /// <summary>Everything, including what is committed.</summary>
    public decimal Total => SumOf(Lines);

    /// <summary>Whether any line of the lab order is open, so that the order costs at least its total.</summary>
    public bool OrderIsOpen => Order.Any(l => l.Amount is null);

    /// <summary>The sum of the lines that have a price.</summary>
    public static decimal SumOf(IEnumerable<CostLine> lines) => lines.Sum(l => l.Amount ?? 0m) + 0.00m;

    /// <summary>An exact amount in cents, half a cent away from zero; null beyond <see cref="Most"/>.</summary>
    public static decimal? ToCents(Ratio exact)
    {
        var most = Ratio.FromDecimal(Most);
        return exact > most || exact < -most ? null : decimal.Parse(exact.ToText(2), NumberStyles.Number, CultureInfo.InvariantCulture);
    }
}
