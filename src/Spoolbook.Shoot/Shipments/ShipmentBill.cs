using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Shipments;

/// <summary>
/// What a consignment costs, and each production's part of it. The parts of each column add up to it to the cent, rounded by the
/// largest remainder.
/// </summary>
/// <param name="Lines">The lab's work, by production.</param>
/// <param name="Shares">A part for each production, in the consignment's order.</param>
public sealed record ShipmentBill(ImmutableArray<(SchoolProduction Production, CostLine Line)> Lines, ImmutableArray<ShipmentShare> Shares)
{
    /// <summary>What common costs are shared by.</summary>
    public SharedBy SharedBy { get; private init; }

    /// <summary>The price of a box; null where nobody wrote it.</summary>
    public decimal? BoxRate { get; private init; }

    /// <summary>The rate of tax; null where nobody wrote it.</summary>
    public decimal? TaxRate { get; private init; }

    /// <summary>The lab's work on all rolls, as far as it has a price.</summary>
    public decimal Work => Shares.Sum(s => s.Work);

    /// <summary>What the order lacks to its minimums.</summary>
    public decimal Minimum => Shares.Sum(s => s.Minimum);

    /// <summary>Shipping.</summary>
    public decimal Shipping => Shares.Sum(s => s.Shipping);

    /// <summary>Tax on all of it.</summary>
    public decimal Tax => Shares.Sum(s => s.Tax);

    /// <summary>The bill.</summary>
    public decimal Total => Shares.Sum(s => s.Total);

    /// <summary>Whether something has no price, so that the bill comes to more.</summary>
    public bool IsOpen => BoxRate is null || Lines.Any(l => l.Line.Amount is null);

    /// <summary>What each payer pays, by the first production of each; an empty name where none is written.</summary>
    public ImmutableArray<(string Payer, decimal Amount)> Payers =>
        [.. Shares.GroupBy(s => s.Payer, StringComparer.Ordinal).Select(g => (g.Key, g.Sum(s => s.Total)))];

    /// <summary>The bill for a consignment; null where no production has prices, or they are in several currencies.</summary>
    public static ShipmentBill? Of(Shipment shipment, SharedBy by)
    {
        var priced = shipment.Productions.Select(p => p.Books.Production.Rates).OfType<Rates>().ToList();
        if (priced.Select(r => r.Currency.Value).Distinct().Count() != 1)
        {
            return null;
        }

        var per = priced.Select(r => r.MinimumPer?.Value).FirstOrDefault(p => p is not null) ?? MinimumPer.Roll;
        ImmutableArray<(SchoolProduction, CostLine)> lines =
        [
            .. from production in shipment.Productions
            from line in CostReckoning.Work(
                CostStage.Ordered,
                production.Books.Production,
                [.. shipment.Of(production).Select(c => c.Roll)],
                per
            )
            select (production, line),
        ];
        var box = priced.Select(r => r.Shipping?.Value).FirstOrDefault(r => r is not null);
        var tax = priced.Select(r => r.Tax?.Value).FirstOrDefault(r => r is not null);
        var work = shipment.Productions.Select(p => CostBook.SumOf(lines.Where(l => l.Item1 == p).Select(l => l.Item2))).ToArray();
        var minimum = per == MinimumPer.Order ? Lacking(shipment, lines, by) : new decimal[work.Length];
        var shipping = Share(Cents(Ratio.FromDecimal(box ?? 0) * shipment.Boxes), Weights(shipment, shipment.Cans, by));
        Ratio[] before = [.. work.Select((w, i) => Ratio.FromDecimal(w + minimum[i] + shipping[i]))];
        var sum = before.Aggregate(Ratio.Zero, (all, b) => all + b);
        var taxes = Share(Cents(sum * Ratio.FromDecimal(tax ?? 0)), before);
        return new ShipmentBill(
            lines,
            [.. shipment.Productions.Select((p, i) => new ShipmentShare(p, work[i], minimum[i], shipping[i], taxes[i]))]
        )
        {
            SharedBy = by,
            BoxRate = box,
            TaxRate = tax,
        };
    }

    // What all rolls of a process together lack to its minimum is shared among those that have such rolls.
    static decimal[] Lacking(Shipment shipment, IEnumerable<(SchoolProduction Production, CostLine Line)> lines, SharedBy by)
    {
        var all = new decimal[shipment.Productions.Length];
        foreach (var process in lines.Where(l => l.Line.Kind == CostKind.Process).GroupBy(l => LabNames.Plain(l.Line.Name ?? "")))
        {
            var least = shipment
                .Productions.SelectMany(p => p.Books.Production.Rates?.Processes ?? [])
                .Where(r => LabNames.Plain(r.Process.Value) == process.Key)
                .Max(r => r.Minimum?.Value);
            if (process.Any(l => l.Line.Amount is null) || CostBook.SumOf(process.Select(l => l.Line)) is var sum && !(sum < least))
            {
                continue;
            }

            var rolls = shipment.Cans.Where(c => LabNames.Plain(c.Process ?? "") == process.Key);
            var lacking = Ratio.FromDecimal(least!.Value - CostBook.SumOf(process.Select(l => l.Line)));
            all = [.. all.Zip(Share(Cents(lacking), Weights(shipment, [.. rolls], by)), (a, b) => a + b)];
        }

        return all;
    }

    static Ratio[] Weights(Shipment shipment, IReadOnlyList<PackedCan> cans, SharedBy by)
    {
        // Cans without a foot of film in them still take a box.
        var shared = by == SharedBy.Feet && cans.All(c => c.Feet.Sign == 0) ? SharedBy.Cans : by;
        return
        [
            .. shipment.Productions.Select(production =>
                cans.Where(c => c.Production == production).ToList() is not { Count: > 0 } own ? Ratio.Zero
                : shared == SharedBy.Feet ? own.Aggregate(Ratio.Zero, (sum, c) => sum + c.Feet)
                : shared == SharedBy.Cans ? own.Count
                : Ratio.One
            ),
        ];
    }

    static long Cents(Ratio amount) => (long)((CostBook.ToCents(amount) ?? 0) * 100);

    static decimal[] Share(long cents, Ratio[] weights)
    {
        var sum = weights.Aggregate(Ratio.Zero, (all, w) => all + w);
        if (sum.Sign == 0)
        {
            return new decimal[weights.Length];
        }

        return [.. LargestRemainder.Round([.. weights.Select(w => w / sum * cents)], cents).Select(c => c / 100m)];
    }
}
