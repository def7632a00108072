using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Shoot.Accounts;

/// <summary>
/// The accounts in centimetres, rounded so that they add up as printed, in a row and in a column. A roll's accounts
/// add up to what was loaded, to the nearest centimetre; the shoot's are the sums of its rolls'; those of days, scenes,
/// lots and bodies add up to the shoot's.
/// </summary>
public sealed class MetricBook
{
    readonly Gauge _gauge;
    readonly Dictionary<RollBook, MetricTally> _rolls = new(ReferenceEqualityComparer.Instance);
    readonly Dictionary<UseOfFilm, MetricTally> _parts = new(ReferenceEqualityComparer.Instance);
    readonly Dictionary<StockDay, (long Loaded, long ShortEnds, long OnHand)> _days = new(ReferenceEqualityComparer.Instance);
    readonly Dictionary<StockUnit, (long Loaded, long ShortEnds)> _units = new(ReferenceEqualityComparer.Instance);
    readonly Dictionary<StockLotBook, MetricStock> _lots = new(ReferenceEqualityComparer.Instance);

    MetricBook(ShootBook book, StockBook stock)
    {
        _gauge = book.Production.Gauge;
        foreach (var roll in book.Rolls)
        {
            _rolls[roll] = Row(roll.Tally);
        }

        Total = book.Counted.Aggregate(MetricTally.None, (sum, roll) => sum + _rolls[roll]);
        _parts[stock.Use] = Total;
        ImmutableArray<IEnumerable<UseOfFilm>> splits =
        [
            stock.Days.Select(d => d.Use),
            stock.Scenes.Select(p => p.Use),
            stock.ByLot.Select(p => p.Use),
            stock.Bodies.Select(p => p.Use),
        ];
        foreach (var split in splits)
        {
            Split([.. split], book.Total, Total);
        }

        foreach (var lot in stock.Lots)
        {
            _lots[lot] = StockOf(lot);
        }

        Stock = Of(stock.Counted);
        var loaded = Column([.. stock.Days.Select(d => d.Loaded)], book.Total.Loaded, Total.Loaded);
        var shortEnds = Column([.. stock.Days.Select(d => d.ShortEndsMade)], Footage.Zero, 0);
        foreach (var (i, day) in stock.Days.Index())
        {
            _days[day] = (loaded[i], shortEnds[i], day.OnHand == stock.OnHand ? Stock.OnHand : Nearest(day.OnHand));
        }

        ShortEndsMade = shortEnds.Sum();
        foreach (var day in stock.Days.Where(d => !d.Units.IsEmpty))
        {
            Split(day);
        }
    }

    /// <summary>The whole shoot, practice rolls apart.</summary>
    public MetricTally Total { get; }

    /// <summary>The stock, without practice lots.</summary>
    public MetricStock Stock { get; }

    /// <summary>Short ends canned in all, in centimetres.</summary>
    public long ShortEndsMade { get; }

    /// <summary>A roll.</summary>
    public MetricTally Of(RollBook roll) => _rolls[roll];

    /// <summary>The shoot, or a day, a scene, a lot or a body of the stock book.</summary>
    public MetricTally Of(UseOfFilm use) => _parts[use];

    /// <summary>Film loaded and short ends canned on a day, and film to load in its evening, in centimetres.</summary>
    public (long Loaded, long ShortEnds, long OnHand) Of(StockDay day) => _days[day];

    /// <summary>Film loaded and short ends canned by a unit on a day, in centimetres.</summary>
    public (long Loaded, long ShortEnds) Of(StockUnit unit) => _units[unit];

    /// <summary>A lot.</summary>
    public MetricStock Of(StockLotBook lot) => _lots[lot];

    /// <summary>Some lots together.</summary>
    public MetricStock Of(IEnumerable<StockLotBook> lots) => lots.Aggregate(new MetricStock(0, 0, 0, 0), (sum, lot) => sum + Of(lot));

    /// <summary>The accounts of a shoot.</summary>
    internal static MetricBook Keep(ShootBook book, StockBook stock) => new(book, stock);

    // Whole units count as their cans say.
    MetricStock StockOf(StockLotBook lot)
    {
        var unit = Nearest(lot.Lot.Length.Value);
        var whole = lot.Unopened.Frames == lot.Lot.Length.Value.Frames * lot.UnitsUnopened;
        return new MetricStock(
            unit * lot.UnitsReceived,
            whole ? unit * lot.UnitsUnopened : Nearest(lot.Unopened),
            Nearest(lot.ShortEnds),
            Nearest(lot.InCamera)
        );
    }

    MetricTally Row(Tally tally)
    {
        var shares = LargestRemainder.Round(
            [.. new[] { tally.Good, tally.Hold, tally.NoGood, tally.Waste, tally.ShortEnd }.Select(Centimetres)],
            Nearest(tally.Loaded)
        );
        return new MetricTally(shares[0], shares[1], shares[2], shares[4], Causes(tally, shares[3]));
    }

    // Each account of all parts together is the shoot's, where the parts are all of it.
    void Split(ImmutableArray<UseOfFilm> parts, Tally total, MetricTally all)
    {
        long[] Of(Func<Tally, Footage> account, long printed) => Column([.. parts.Select(p => account(p.Tally))], account(total), printed);
        var good = Of(t => t.Good, all.Good);
        var hold = Of(t => t.Hold, all.Hold);
        var noGood = Of(t => t.NoGood, all.NoGood);
        var waste = Of(t => t.Waste, all.Waste);
        var shortEnd = Of(t => t.ShortEnd, all.ShortEnd);
        foreach (var (i, part) in parts.Index())
        {
            _parts[part] = new MetricTally(good[i], hold[i], noGood[i], shortEnd[i], Causes(part.Tally, waste[i]));
        }
    }

    void Split(StockDay day)
    {
        Split([.. day.Units.Select(u => u.Use)], day.Use.Tally, _parts[day.Use]);
        var loaded = Column([.. day.Units.Select(u => u.Loaded)], day.Loaded, _days[day].Loaded);
        var shortEnds = Column([.. day.Units.Select(u => u.ShortEndsMade)], day.ShortEndsMade, _days[day].ShortEnds);
        foreach (var (i, unit) in day.Units.Index())
        {
            _units[unit] = (loaded[i], shortEnds[i]);
        }
    }

    // A column that is not all of the total adds up to its own sum.
    long[] Column(ImmutableArray<Footage> parts, Footage total, long printed)
    {
        var sum = StockBook.Sum(parts, p => p);
        return LargestRemainder.Round([.. parts.Select(Centimetres)], sum == total ? printed : Nearest(sum));
    }

    ImmutableSortedDictionary<WasteCause, long> Causes(Tally tally, long waste)
    {
        var causes = tally.Wasted.Where(w => w.Value > Footage.Zero).ToList();
        var shares = LargestRemainder.Round([.. causes.Select(c => Centimetres(c.Value))], causes.Count == 0 ? 0 : waste);
        return causes.Index().ToImmutableSortedDictionary(c => c.Item.Key, c => shares[c.Index]);
    }

    Ratio Centimetres(Footage film) => film.Metres(_gauge) * 100;

    long Nearest(Footage film) => (long)Centimetres(film).Round();
}
