using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Accounts;

/// <summary>
/// The bridge from the film that was bought to the film that is left. Every foot that came is in exactly one place, so both
/// sides add up to the same, to the frame and in whole centimetres.
/// </summary>
/// <param name="Origins">How it came, every kind once; none is below zero but what cans lacked.</param>
/// <param name="Places">Where it is, every place once.</param>
public sealed record FilmBridge(ImmutableArray<BridgePart<FilmOrigin>> Origins, ImmutableArray<BridgePart<FilmPlace>> Places)
{
    /// <summary>All the film.</summary>
    public Footage All => StockBook.Sum(Places, p => p.Film);

    /// <summary>All the film in whole centimetres, the sum of the places as printed.</summary>
    public long Centimetres => Places.Sum(p => p.Centimetres);

    /// <summary>The film of one origin.</summary>
    public BridgePart<FilmOrigin> Of(FilmOrigin origin) => Origins.Single(o => o.What == origin);

    /// <summary>The film in one place.</summary>
    public BridgePart<FilmPlace> At(FilmPlace place) => Places.Single(p => p.What == place);

    /// <summary>The bridge of a shoot.</summary>
    internal static FilmBridge Keep(ShootBook shoot, StockBook stock, MetricBook metric)
    {
        var (total, printed, gauge) = (shoot.Total, metric.Total, shoot.Production.Gauge);
        var (lots, practice) = (stock.Lots, metric.Of(stock.Practice));
        Footage Of(Func<StockLotBook, Footage> film) => StockBook.Sum(lots, film);
        Footage Left(Func<StockLotBook, Footage> film) => StockBook.Sum(stock.Counted, film);
        Footage Moved<TEntry>()
            where TEntry : StockEntry =>
            StockBook.Sum(stock.Moves.Where(m => m is { Counts: true, Lasts: true, Entry: TEntry }), m => m.Film);
        BridgePart<TWhat> Nearest<TWhat>(TWhat what, Footage film) => new(what, film, (long)(film.Metres(gauge) * 100).Round());

        ImmutableArray<BridgePart<FilmPlace>> places =
        [
            new(FilmPlace.Good, total.Good, printed.Good),
            new(FilmPlace.Hold, total.Hold, printed.Hold),
            new(FilmPlace.NoGood, total.NoGood, printed.NoGood),
            new(FilmPlace.Waste, total.Waste, printed.Waste),
            Nearest(FilmPlace.Practice, Of(l => l.Practice) + StockBook.Sum(stock.Practice, l => l.Left)),
            Nearest(FilmPlace.ThrownAway, Moved<StockRecanned>() + Moved<StockSplit>()),
            Nearest(FilmPlace.Lost, Moved<StockLost>()),
            Nearest(FilmPlace.Damaged, Moved<StockDamaged>()),
            Nearest(FilmPlace.SentAway, Moved<StockSentAway>()),
            Nearest(FilmPlace.Unread, Of(l => l.Unread)),
            new(FilmPlace.InCamera, Left(l => l.InCamera), metric.Stock.InCamera),
            new(FilmPlace.ShortEnds, Left(l => l.ShortEnds), metric.Stock.ShortEnds),
            new(FilmPlace.Unopened, Left(l => l.Unopened), metric.Stock.Unopened),
        ];
        ImmutableArray<BridgePart<FilmOrigin>> origins =
        [
            new(FilmOrigin.Bought, Left(l => l.Received), metric.Stock.Received),
            new(FilmOrigin.BoughtForPractice, StockBook.Sum(stock.Practice, l => l.Received), practice.Received),
            Nearest(FilmOrigin.Came, Moved<StockCame>()),
            Nearest(FilmOrigin.FromNoCan, total.Exposed - Of(l => l.Exposed)),
        ];

        // In centimetres it also takes what rounding leaves, so that the printed sides agree.
        var remeasured = new BridgePart<FilmOrigin>(
            FilmOrigin.Remeasured,
            Of(l => l.Remeasured),
            places.Sum(p => p.Centimetres) - origins.Sum(o => o.Centimetres)
        );
        return new FilmBridge([.. origins, remeasured], places);
    }
}
