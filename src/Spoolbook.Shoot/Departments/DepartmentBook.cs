using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Departments;

/// <summary>
/// A school's book over all its productions: where its stock and its kit are, and what the productions come to together. Every sum is
/// one of the productions' own figures.
/// </summary>
public sealed record DepartmentBook
{
    /// <summary>What the school's file says.</summary>
    public required Department Department { get; init; }

    /// <summary>The productions, in the order of their names.</summary>
    public required ImmutableArray<ProductionShare> Shares { get; init; }

    /// <summary>The day on which it is looked at.</summary>
    public required DateOnly Today { get; init; }

    /// <summary>Every lot on the shelf, in the order of the list.</summary>
    public required ImmutableArray<ShelfLot> Shelf { get; init; }

    /// <summary>Units that changed hands in a way that two productions do not agree on, in order of time.</summary>
    public required ImmutableArray<HandOver> Disagreements { get; init; }

    // How far ahead a store looks: film that is ordered today is there in a week.
    const int DaysAhead = 7;

    /// <summary>The gauges of the productions, in the order of the productions. Frames of two gauges are never added up.</summary>
    public IEnumerable<Gauge> Gauges => Shares.Select(s => s.Gauge).Distinct();

    /// <summary>The productions of a gauge.</summary>
    public IEnumerable<ProductionShare> Of(Gauge gauge) => Shares.Where(s => s.Gauge == gauge);

    /// <summary>All film of the productions of a gauge.</summary>
    public Tally TotalOf(Gauge gauge) => Of(gauge).Aggregate(Tally.Empty, (sum, share) => sum + share.Use.Tally);

    /// <summary>The same in centimetres: the sum of what the productions' own metric papers print.</summary>
    public MetricTally MetricOf(Gauge gauge) => Of(gauge).Aggregate(MetricTally.None, (sum, share) => sum + share.Metric);

    /// <summary>What is left of a production's budget, below zero where it is spent; null without a budget or a cost.</summary>
    public decimal? BudgetLeft(ProductionShare share) => Department.Budget?.Value - share.Cost;

    /// <summary>Every stock of the shelf and of the productions, by name.</summary>
    public IEnumerable<StockOfSchool> Stock =>
        from stock in Shelf
            .Select(l => (l.Lot.Stock.Value, Gauge.Film16))
            .Concat(Shares.SelectMany(s => s.Stock.Select(k => (k.Stock, s.Gauge))))
            .Distinct()
        orderby stock.Item1
        let shelf = stock.Item2 == Gauge.Film16
            ? StockBook.Sum(Shelf.Where(l => l.Lot.Stock.Value == stock.Item1), l => l.FilmOnShelf)
            : Footage.Zero
        let kinds = Of(stock.Item2).SelectMany(s => s.Stock.Where(k => k.Stock == stock.Item1).Select(k => (Share: s, Kind: k))).ToArray()
        let soon = StockBook.Sum(kinds.Where(k => ShootsSoon(k.Share)), k => k.Kind.Lacking)
        select new StockOfSchool(
            stock.Item1,
            stock.Item2,
            shelf,
            StockBook.Sum(kinds, k => k.Kind.Left),
            StockBook.Sum(kinds, k => k.Kind.Lacking),
            Footage.Max(Footage.Zero, soon - shelf)
        );

    bool ShootsSoon(ProductionShare share) => share.Days.Any(d => d >= Today && d <= Today.AddDays(DaysAhead));

    /// <summary>What all productions cost so far, by currency, in the order of the codes.</summary>
    public IEnumerable<(string Currency, decimal Cost)> Costs =>
        from share in Shares
        where share.Cost is not null
        group share by share.Currency ?? "" into same
        orderby same.Key
        select (same.Key, same.Sum(s => s.Cost!.Value));

    /// <summary>What the checks found in all productions together, the most first.</summary>
    public IEnumerable<FoundByCheck> Found =>
        Shares
            .SelectMany(s => s.Found)
            .GroupBy(f => f.Check, StringComparer.Ordinal)
            .Select(g => new FoundByCheck(g.Key, g.Max(f => f.Level), g.Sum(f => f.Count)))
            .OrderByDescending(f => f.Count)
            .ThenBy(f => f.Check, StringComparer.Ordinal);

    /// <summary>The loans that are out, those due first.</summary>
    public IEnumerable<KitLoan> OutNow =>
        Department.Loans.Where(l => l.CameBack is null && l.Out.Value <= Today).OrderBy(l => l.Back.Value);

    /// <summary>The production that a text names; null where it is none of them.</summary>
    public ProductionShare? Named(string? text) => Shares.FirstOrDefault(s => s.IsNamed(text));

    /// <summary>Keeps the book.</summary>
    /// <param name="shares">The productions, in any order.</param>
    /// <param name="today">The day on which it is looked at.</param>
    public static DepartmentBook Sum(Department department, IEnumerable<ProductionShare> shares, DateOnly today)
    {
        var all = shares.OrderBy(s => s.Name, StringComparer.Ordinal).ToImmutableArray();
        var events = all.SelectMany(s => s.Units).ToLookup(e => (e.Lot, e.Unit));
        var disagreements = ImmutableArray.CreateBuilder<HandOver>();
        var shelf = department
            .Lots.Select(lot => new ShelfLot(
                lot,
                [
                    .. Enumerable
                        .Range(1, lot.Units.Value)
                        .Select(number => UnitStory.Follow(lot.Name.Value, number, events[(lot.Name.Value, number)], all, disagreements)),
                ]
            ))
            .ToImmutableArray();
        return new DepartmentBook
        {
            Department = department,
            Shares = all,
            Today = today,
            Shelf = shelf,
            Disagreements = [.. disagreements.OrderBy(h => h.Unit.At).ThenBy(h => h.Unit.Place.File, StringComparer.Ordinal)],
        };
    }
}
