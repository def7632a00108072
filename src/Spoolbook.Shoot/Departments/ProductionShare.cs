using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Departments;

/// <summary>
/// What a school keeps of one production: sums out of its books, and what it did with the school's stock and kit. Small, so that a
/// term of productions fits in memory.
/// </summary>
public sealed record ProductionShare
{
    /// <summary>The production's path from the school's folder.</summary>
    public required string Name { get; init; }

    /// <summary>Its title.</summary>
    public required string Title { get; init; }

    /// <summary>Its code.</summary>
    public required string Code { get; init; }

    /// <summary>Its gauge.</summary>
    public required Gauge Gauge { get; init; }

    /// <summary>How well its film was used.</summary>
    public required UseOfFilm Use { get; init; }

    /// <summary>The same in centimetres, as its own metric papers print it.</summary>
    public required MetricTally Metric { get; init; }

    /// <summary>Its rolls, without practice rolls.</summary>
    public required int Rolls { get; init; }

    /// <summary>Shots that are got.</summary>
    public required int ShotsGot { get; init; }

    /// <summary>Shots of its list; null where it has none.</summary>
    public required int? ShotsListed { get; init; }

    /// <summary>Its film by stock, in the order of its lots.</summary>
    public required ImmutableArray<KindOfStock> Stock { get; init; }

    /// <summary>What it cost so far; null where no line has a price.</summary>
    public required decimal? Cost { get; init; }

    /// <summary>The currency of the cost; null without rates.</summary>
    public required string? Currency { get; init; }

    /// <summary>Rolls that went to the lab, in their order.</summary>
    public required ImmutableArray<RollAtLab> AtLab { get; init; }

    /// <summary>Its findings by check, the most first.</summary>
    public required ImmutableArray<FoundByCheck> Found { get; init; }

    /// <summary>Its shooting days, in order.</summary>
    public required ImmutableArray<DateOnly> Days { get; init; }

    /// <summary>What it wrote about units of the school's stock, in the order of the log.</summary>
    public required ImmutableArray<UnitEvent> Units { get; init; }

    /// <summary>Its rolls in bodies of the school's.</summary>
    public required ImmutableArray<BodyUse> Bodies { get; init; }

    /// <summary>Units of the school's stock by lot, as its own stock book counts them: came, less what it sent away.</summary>
    public required ImmutableSortedDictionary<string, int> UnitsByBook { get; init; }

    /// <summary>How many findings are of a level.</summary>
    public int Count(Level level) => Found.Where(f => f.Level == level).Sum(f => f.Count);

    /// <summary>Whether a text names it: by its folder, its code or its title.</summary>
    public bool IsNamed(string? text) =>
        text is not null
        && (
            text == Name
            || string.Equals(text, Code, StringComparison.OrdinalIgnoreCase)
            || string.Equals(text, Title, StringComparison.OrdinalIgnoreCase)
        );

    /// <summary>The share of a production.</summary>
    /// <param name="name">Its path from the school's folder.</param>
    /// <param name="findings">What is left of its findings.</param>
    public static ProductionShare Of(string name, Books books, ImmutableArray<Finding> findings)
    {
        var production = books.Production;
        var lots = production.Lots.Where(l => l.OnShelf is not null).Select(l => l.Name.Value).ToHashSet(StringComparer.Ordinal);
        var bodies = production.Bodies.Where(b => b.Place.IsAbove).Select(b => b.Name.Value).ToHashSet(StringComparer.Ordinal);
        return new ProductionShare
        {
            Name = name,
            Title = production.Title.Value,
            Code = production.Code.Value,
            Gauge = production.Gauge,
            Use = books.Stock.Use,
            Metric = books.Metric.Total,
            Rolls = books.Shoot.Counted.Count(),
            // A shot that is on no list makes up for none that is, and nobody waits for one that was dropped.
            ShotsGot = production.Shots.IsEmpty ? books.Coverage.Got.Length : books.Coverage.Wanted.Count(s => s.IsGot),
            ShotsListed = production.Shots.IsEmpty ? null : books.Coverage.Wanted.Count(),
            Stock = [.. Kinds(books)],
            Cost = books.Cost.IsPriced ? books.Cost.ToDate : null,
            Currency = books.Cost.Currency,
            AtLab =
            [
                .. books
                    .Shoot.Counted.Select(r => (r.Roll, Sent: production.SentOn(r.Roll)))
                    .Where(r => r.Sent is not null)
                    .Select(r => new RollAtLab(r.Roll.Name.Value, r.Sent!.Value)),
            ],
            Found =
            [
                .. findings
                    .GroupBy(f => (f.Check, f.Level))
                    .Select(g => new FoundByCheck(g.Key.Check, g.Key.Level, g.Count()))
                    .OrderByDescending(f => f.Count)
                    .ThenBy(f => f.Check, StringComparer.Ordinal),
            ],
            Days = [.. production.Days.Select(d => d.On.Value)],
            Units = [.. Loads(name, production, lots), .. Moves(name, production, lots)],
            Bodies = [.. books.Shoot.Rolls.SelectMany(r => Uses(name, r, bodies))],
            UnitsByBook = books
                .Stock.Lots.Where(l => lots.Contains(l.Lot.Name.Value))
                .ToImmutableSortedDictionary(l => l.Lot.Name.Value, l => l.UnitsCame - l.UnitsSentAway, StringComparer.Ordinal),
        };
    }

    static IEnumerable<KindOfStock> Kinds(Books books)
    {
        var lacking = (books.Forecast.PlainOrders ?? []).ToLookup(o => o.Order.Stock, o => o.Film);
        return books
            .Stock.Counted.GroupBy(l => l.Lot.Stock.Value, StringComparer.Ordinal)
            .Select(lots => new KindOfStock(
                lots.Key,
                StockBook.Sum(lots, l => l.Exposed),
                StockBook.Sum(lots, l => l.Left),
                StockBook.Sum(lacking[lots.Key], film => film)
            ));
    }

    static IEnumerable<UnitEvent> Loads(string name, Production production, HashSet<string> lots) =>
        from roll in production.Rolls
        where roll is { Lot: not null, Unit: not null, ShortEndOf: null } && lots.Contains(roll.Lot.Value)
        select new UnitEvent(
            name,
            roll.Lot!.Value,
            roll.Unit!.Value,
            UnitEventKind.Loaded,
            roll.Load.On.Value,
            null,
            Below(name, roll.Unit.Place)
        );

    static IEnumerable<UnitEvent> Moves(string name, Production production, HashSet<string> lots) =>
        from entry in production.StockLog
        where entry is StockCame or StockSentAway && entry.Lot is not null && lots.Contains(entry.Lot.Value)
        from unit in entry.Units.DistinctBy(u => u.Value)
        select new UnitEvent(
            name,
            entry.Lot!.Value,
            unit.Value,
            entry is StockCame ? UnitEventKind.Came : UnitEventKind.Went,
            entry.At,
            entry is StockCame came ? came.From?.Value : ((StockSentAway)entry).To?.Value,
            Below(name, unit.Place)
        );

    static IEnumerable<BodyUse> Uses(string name, RollBook roll, HashSet<string> bodies) =>
        from stay in roll.Walk.Stays
        where bodies.Contains(stay.Body)
        select new BodyUse(
            stay.Body,
            roll.Roll.Name.Value,
            DateOnly.FromDateTime(stay.From),
            DateOnly.FromDateTime(stay.To ?? stay.From),
            Below(name, stay.In)
        );

    static Place Below(string name, Place place) => place with { File = $"{name}/{place.File}" };
}
