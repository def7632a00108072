using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Accounts;

/// <summary>Where a can of raw stock is.</summary>
public enum StockPlace
{
    /// <summary>It has not come yet, or the roll that it is cut from is still in the camera.</summary>
    NotYet,

    /// <summary>On hand: it can be loaded.</summary>
    Store,

    /// <summary>In a camera.</summary>
    Camera,

    /// <summary>Out of the camera: exposed; what was left over is a short end with a can of its own.</summary>
    Shot,

    /// <summary>Opened to practise with.</summary>
    Practised,

    /// <summary>Given to somebody else.</summary>
    SentAway,

    /// <summary>Lost, or damaged beyond use.</summary>
    Lost,
}

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

    /// <summary>What the stock log tells of it, in order of time, entries that cannot be right among them.</summary>
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

        return Moves.LastOrDefault(m => m.Counts && m.On <= evening && m.Entry is not StockRecanned)?.Entry switch
        {
            StockCame => StockPlace.Store,
            StockSentAway => StockPlace.SentAway,
            not null => StockPlace.Lost,
            _ when ShortEnd is { } end => end.Made <= evening ? StockPlace.Store : StockPlace.NotYet,
            _ => Unit <= Lot.Units.Value ? StockPlace.Store : StockPlace.NotYet,
        };
    }

    /// <summary>Film in it in the evening of a day, were it unopened: its film at first, less ends thrown away.</summary>
    public Footage FilmOn(DateOnly evening) => Film + StockBook.Sum(Moves.Where(m => m.Entry is StockRecanned && m.On <= evening), m => m.Change);
}
