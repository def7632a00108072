using System.Collections.Immutable;
using Spoolbook.Film;

namespace Spoolbook.Shoot.Accounts;

/// <summary>All the lots of one stock: cans of one name at one index, whatever their emulsion number.</summary>
/// <param name="Name">The stock's name as on the can.</param>
/// <param name="Lots">Its lots, in the production's order.</param>
public sealed record StockKind(string Name, ImmutableArray<StockLotBook> Lots)
{
    /// <summary>Cans not loaded: still sealed, or canned again.</summary>
    public int Unopened => Lots.Sum(l => l.UnitsUnopened);

    /// <summary>How many of them were opened and canned again.</summary>
    public int Recanned => Lots.Sum(l => l.UnitsRecanned);

    /// <summary>Short ends in their cans.</summary>
    public int ShortEndCans => Lots.Sum(l => l.ShortEndCans);

    /// <summary>Film in short ends.</summary>
    public Footage ShortEnds => StockBook.Sum(Lots, l => l.ShortEnds);

    /// <summary>Film to load: sealed cans and short ends.</summary>
    public Footage OnHand => StockBook.Sum(Lots, l => l.OnHand);

    /// <summary>Unexposed film in the cameras.</summary>
    public Footage InCamera => StockBook.Sum(Lots, l => l.InCamera);

    /// <summary>Film that can still be shot.</summary>
    public Footage Left => StockBook.Sum(Lots, l => l.Left);
}
