using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Accounts;

/// <summary>
/// One lot of raw stock, and where all of it is. Every unit is unopened, shot, used for practice, sent away or lost,
/// exactly once. Every foot that came, corrected by the measured length of cans, is in exactly one place: <c>Received +
/// Came + Remeasured = Unopened + Exposed + ShortEnds + InCamera + Practice + Unread + SentAway + Lost</c>.
/// </summary>
public sealed record StockLotBook
{
    /// <summary>The lot.</summary>
    public required StockLot Lot { get; init; }

    /// <summary>Whether the lot is for practice and counted apart.</summary>
    public bool IsPractice => Lot.Practice?.Value ?? false;

    /// <summary>Units of the first delivery.</summary>
    public int UnitsReceived => Lot.Units.Value;

    /// <summary>Units that came later, or came back, by the stock log.</summary>
    public required int UnitsCame { get; init; }

    /// <summary>Units sent away; one that came back counts here and in <see cref="UnitsCame"/>.</summary>
    public required int UnitsSentAway { get; init; }

    /// <summary>Units lost or damaged; one that was found again counts here and in <see cref="UnitsCame"/>.</summary>
    public required int UnitsLost { get; init; }

    /// <summary>Units loaded for shooting.</summary>
    public required int UnitsLoaded { get; init; }

    /// <summary>Units opened for practice and never shot.</summary>
    public required int UnitsPractised { get; init; }

    /// <summary>Units not loaded: still sealed, or canned again.</summary>
    public int UnitsUnopened => UnitsReceived + UnitsCame - UnitsSentAway - UnitsLost - UnitsLoaded - UnitsPractised;

    /// <summary>How many of them were opened and canned again.</summary>
    public required int UnitsRecanned { get; init; }

    /// <summary>The numbers of the sealed units.</summary>
    public required ImmutableArray<int> Sealed { get; init; }

    /// <summary>Film in the units of the first delivery, by their cans.</summary>
    public Footage Received => Times(UnitsReceived);

    /// <summary>Film that came later, or came back.</summary>
    public required Footage Came { get; init; }

    /// <summary>Film sent away, including short ends.</summary>
    public required Footage SentAway { get; init; }

    /// <summary>Film lost or damaged, including short ends, and ends thrown away when stock was canned again.</summary>
    public required Footage Lost { get; init; }

    /// <summary>Film in units still sealed, or opened and canned again.</summary>
    public required Footage Unopened { get; init; }

    /// <summary>Film loaded from whole units, as loaded; a short end loaded again is not counted twice.</summary>
    public required Footage Loaded { get; init; }

    /// <summary>Film in cans beyond (or, below zero, short of) what the can, or the parent of a short end, says.</summary>
    public required Footage Remeasured { get; init; }

    /// <summary>The account of the film of its rolls, including short ends loaded again. Film left over counts where it is now.</summary>
    public required Tally Shot { get; init; }

    /// <summary>Film exposed or lost.</summary>
    public Footage Exposed => Shot.Exposed;

    /// <summary>Short ends in their cans, not used again.</summary>
    public required Footage ShortEnds { get; init; }

    /// <summary>How many short ends are in their cans.</summary>
    public required int ShortEndCans { get; init; }

    /// <summary>Unexposed film on rolls in a camera.</summary>
    public required Footage InCamera { get; init; }

    /// <summary>Film used for practice.</summary>
    public required Footage Practice { get; init; }

    /// <summary>Film of rolls without a strip.</summary>
    public required Footage Unread { get; init; }

    /// <summary>Film to load: sealed units and short ends.</summary>
    public Footage OnHand => Unopened + ShortEnds;

    /// <summary>Film that can still be shot: on hand, and in the cameras.</summary>
    public Footage Left => OnHand + InCamera;

    Footage Times(int units) => new(Lot.Length.Value.Frames * units);
}
