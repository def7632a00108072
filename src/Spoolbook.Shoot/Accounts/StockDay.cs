using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Accounts;

/// <summary>What happened to the stock in one day, and what is left in the evening.</summary>
public sealed record StockDay
{
    /// <summary>The date.</summary>
    public required DateOnly On { get; init; }

    /// <summary>The shooting day; null on a day that the production does not list.</summary>
    public ShootingDay? Day { get; init; }

    /// <summary>Film loaded, including short ends loaded again.</summary>
    public required Footage Loaded { get; init; }

    /// <summary>Rolls loaded.</summary>
    public required int RollsLoaded { get; init; }

    /// <summary>The use of the film that the day exposed, lost or left over.</summary>
    public required UseOfFilm Use { get; init; }

    /// <summary>The day camera by camera, where the production lists several days on the date: two units; empty otherwise.</summary>
    public ImmutableArray<StockUnit> Units { get; init; } = [];

    /// <summary>The account of the film from the first day to the evening of this one.</summary>
    public required Tally ToDate { get; init; }

    /// <summary>Film exposed to good film, to date: the n of n:1; null without good film.</summary>
    public Ratio? ExposedToGoodToDate => ToDate.Good == Footage.Zero ? null : new Ratio(ToDate.Exposed.Frames, ToDate.Good.Frames);

    /// <summary>Short ends canned.</summary>
    public required Footage ShortEndsMade { get; init; }

    /// <summary>Film that came or came back by the stock log, without practice lots.</summary>
    public required Footage Came { get; init; }

    /// <summary>Film sent away, lost, damaged or thrown away by the stock log, without practice lots.</summary>
    public required Footage Went { get; init; }

    /// <summary>Film to load in the evening: sealed units and short ends, without practice lots.</summary>
    public required Footage OnHand { get; init; }

    /// <summary>Film in the cameras overnight and not yet exposed.</summary>
    public required Footage InCamera { get; init; }

    /// <summary>Film that can still be shot in the evening.</summary>
    public Footage Left => OnHand + InCamera;
}
