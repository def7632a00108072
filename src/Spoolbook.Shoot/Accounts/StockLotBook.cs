using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Accounts;

/// <summary>
/// One lot of raw stock and where all of it is. Every unit is unopened, shot, used for practice, sent away or
/// lost, exactly once; and every foot that came, set right by what cans were found to hold, is somewhere,
/// exactly once: <c>Received + Came + Remeasured = Unopened + Exposed + ShortEnds + InCamera + Practice + Unread
/// + SentAway + Lost</c>.
/// </summary>
public sealed record StockLotBook
{
    /// <summary>The lot.</summary>
    public required StockLot Lot { get; init; }

    /// <summary>Whether the lot was bought for practice and is counted apart.</summary>
    public bool IsPractice => Lot.Practice?.Value ?? false;

    /// <summary>Units of the first delivery.</summary>
    public int UnitsReceived => Lot.Units.Value;

    /// <summary>Units that came later, or came back, by the stock log.</summary>
    public required int UnitsCame { get; init; }

    /// <summary>Units sent away; one that came back was sent away and came.</summary>
    public required int UnitsSentAway { get; init; }

    /// <summary>Units lost or damaged; one that was found again was lost and came.</summary>
    public required int UnitsLost { get; init; }

    /// <summary>Units loaded to be shot.</summary>
    public required int UnitsLoaded { get; init; }

    /// <summary>Units opened to practise with, and never shot.</summary>
    public required int UnitsPractised { get; init; }

    /// <summary>Units still sealed.</summary>
    public int UnitsUnopened => UnitsReceived + UnitsCame - UnitsSentAway - UnitsLost - UnitsLoaded - UnitsPractised;

    /// <summary>Their numbers.</summary>
    public required ImmutableArray<int> Sealed { get; init; }

    /// <summary>Film in the units of the first delivery, as their cans say.</summary>
    public Footage Received => Times(UnitsReceived);

    /// <summary>Film that came later, or came back.</summary>
    public required Footage Came { get; init; }

    /// <summary>Film sent away, short ends among it.</summary>
    public required Footage SentAway { get; init; }

    /// <summary>Film lost or damaged, short ends among it, and ends thrown away when stock was canned again.</summary>
    public required Footage Lost { get; init; }

    /// <summary>Film in units still sealed, or opened and canned again.</summary>
    public required Footage Unopened { get; init; }

    /// <summary>Film loaded from whole units, as loaded; a short end loaded again is not counted twice.</summary>
    public required Footage Loaded { get; init; }

    /// <summary>
    /// What was found to be in cans, more (or, below zero, less) than the can, or the roll that a short end came from, says.
    /// </summary>
    public required Footage Remeasured { get; init; }

    /// <summary>
    /// Where the film of its rolls fell, short ends loaded again among them. Their film left over is counted where it is now.
    /// </summary>
    public required Tally Shot { get; init; }

    /// <summary>Film exposed or lost.</summary>
    public Footage Exposed => Shot.Exposed;

    /// <summary>Short ends in their cans, not used again.</summary>
    public required Footage ShortEnds { get; init; }

    /// <summary>How many short ends are in their cans.</summary>
    public required int ShortEndCans { get; init; }

    /// <summary>Film not yet exposed on rolls that are in a camera.</summary>
    public required Footage InCamera { get; init; }

    /// <summary>Film used for practice.</summary>
    public required Footage Practice { get; init; }

    /// <summary>Film of rolls whose sheets let no strip be made.</summary>
    public required Footage Unread { get; init; }

    /// <summary>Film to load: sealed units and short ends.</summary>
    public Footage OnHand => Unopened + ShortEnds;

    /// <summary>Film that can still be shot: on hand, and in the cameras.</summary>
    public Footage Left => OnHand + InCamera;

    Footage Times(int units) => new(Lot.Length.Value.Frames * units);
}
