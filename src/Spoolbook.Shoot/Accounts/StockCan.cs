using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Accounts;

/// <summary>One can of raw stock that something happened to: a unit of a lot, or a short end.</summary>
public sealed record StockCan
{
    /// <summary>The lot of its film.</summary>
    public required StockLot Lot { get; init; }

    /// <summary>The number of the unit in its lot, from 1; null for a short end.</summary>
    public int? Unit { get; init; }

    /// <summary>The short end; null for a unit.</summary>
    public StockShortEnd? ShortEnd { get; init; }

    /// <summary>Film in it at first.</summary>
    public required Footage Film { get; init; }

    /// <summary>The roll that it was loaded as; null where it was not.</summary>
    public StockLoad? Load { get; init; }

    /// <summary>Its entries in the stock log, in order of time, impossible ones included.</summary>
    public required ImmutableArray<StockMove> Moves { get; init; }

    /// <summary>Where it is in the evening of a day.</summary>
    public StockPlace On(DateOnly evening)
    {
        if (Load is { } load && load.On <= evening)
        {
            return load.Roll.IsPractice ? StockPlace.Practised
                : load.Out is not { } taken || taken > evening ? StockPlace.Camera
                : StockPlace.Shot;
        }

        return Moves.LastOrDefault(m => m.Counts && m.On <= evening && !m.IsOff)?.Entry switch
        {
            StockCame => StockPlace.Store,
            StockSentAway => StockPlace.SentAway,
            not null => StockPlace.Lost,
            _ when ShortEnd is { } end => end.Made <= evening ? StockPlace.Store : StockPlace.NotYet,
            _ => Unit <= Lot.Units.Value ? StockPlace.Store : StockPlace.NotYet,
        };
    }

    /// <summary>Film in it in the evening of a day if it is unopened: its film at first, less ends thrown away.</summary>
    public Footage FilmOn(DateOnly evening) => Film + StockBook.Sum(Moves.Where(m => m.IsOff && m.On <= evening), m => m.Change);
}
