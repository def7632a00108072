using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Accounts;

/// <summary>
/// Finds the stock of every roll, and gives each unit and each piece of a short end to at most one roll. A roll without stock (its
/// lot is unknown, its unit was never received, or another roll has it) stays unplaced, so that no film is counted that
/// never came.
/// </summary>
sealed class StockPlacing
{
    readonly Dictionary<Roll, RollBook> _books = new(ReferenceEqualityComparer.Instance);
    readonly Dictionary<StockLot, HashSet<int>> _taken = new(ReferenceEqualityComparer.Instance);
    readonly Dictionary<Roll, ImmutableArray<StockPiece>> _pieces = new(ReferenceEqualityComparer.Instance);
    readonly Dictionary<Roll, StockLoad> _placed = new(ReferenceEqualityComparer.Instance);
    readonly Production _production;
    readonly Footage _slack;

    StockPlacing(ShootBook book)
    {
        (_production, _slack) = (book.Production, book.Slack.ShortEnd);
        foreach (var roll in book.Rolls)
        {
            _books[roll.Roll] = roll;
        }
    }

    /// <summary>The rolls with their stock, those for shooting first, and the pieces of each short end by its roll.</summary>
    public static (IReadOnlyCollection<StockLoad> Placed, IReadOnlyDictionary<Roll, ImmutableArray<StockPiece>> Pieces) Place(
        ShootBook book
    )
    {
        var placing = new StockPlacing(book);

        // A practice roll gets what no other roll claims: a dummy spool is loaded many times, and its number means
        // little. Earlier loads come first; at one time, the order of the names.
        foreach (var practice in new[] { false, true })
        {
            var rolls = book.Production.Rolls.Where(r => r.IsPractice == practice).OrderBy(r => r.Load.On.Value).ToList();
            placing.PlaceUnits(rolls);
            placing.PlaceShortEnds();
        }

        return (placing._placed.Values, placing._pieces);
    }

    void PlaceUnits(List<Roll> rolls)
    {
        // Numbered units first, so that a roll without a number takes none of theirs.
        foreach (var roll in rolls.Where(r => r.ShortEndOf is null).OrderBy(r => r.Unit is null))
        {
            if (
                roll.Lot is { } name
                && _production.Lots.FirstOrDefault(l => l.Name.Value == name.Value) is { } lot
                && TakeUnit(lot, roll.Unit?.Value) is { } unit
            )
            {
                var off = StockStory.Off(StockStory.OfUnit(_production, lot, unit, roll.Load.On.Value));
                Place(roll, lot, null, lot.Length.Value - off, unit);
            }
        }
    }

    int? TakeUnit(StockLot lot, int? unit)
    {
        if (!_taken.TryGetValue(lot, out var taken))
        {
            _taken[lot] = taken = [];
        }

        var number = unit ?? FreeUnit(lot, taken);
        return IsReceived(lot, number) && taken.Add(number) ? number : null;
    }

    // Preferably a unit that is not in the log: most entries say that a unit is gone.
    int FreeUnit(StockLot lot, HashSet<int> taken)
    {
        var logged = _production.StockLog.Where(e => e.Lot?.Value == lot.Name.Value).SelectMany(StockStory.UnitsOf).ToHashSet();
        var quiet = Enumerable.Range(1, taken.Count + logged.Count + 1).First(n => !taken.Contains(n) && !logged.Contains(n));
        return IsReceived(lot, quiet) ? quiet : logged.Order().FirstOrDefault(n => !taken.Contains(n) && IsReceived(lot, n));
    }

    bool IsReceived(StockLot lot, int number) => number >= 1 && (number <= lot.Units.Value || _production.Came(lot, number));

    void PlaceShortEnds()
    {
        var waiting = _production.Rolls.Where(r => r.ShortEndOf is not null).ToLookup(r => r.ShortEndOf!.Value);
        var parents = new Queue<StockLoad>(_placed.Values);
        while (parents.TryDequeue(out var parent))
        {
            if (_pieces.ContainsKey(parent.Roll) || LeftOn(parent) is not { Frames: > 0 } left)
            {
                continue;
            }

            var rolls = waiting[parent.Roll.Name.Value].Where(r => !_placed.ContainsKey(r));
            _pieces[parent.Roll] = StockPieces.Cut(_production, parent.Lot, parent.Roll, left, rolls, _slack);
            foreach (var piece in _pieces[parent.Roll].Where(p => p.Roll is not null))
            {
                parents.Enqueue(Place(piece.Roll!, parent.Lot, parent.Roll, piece.Said, null));
            }
        }
    }

    // A practice roll is fogged from end to end, and film still in the camera is not a short end.
    static Footage? LeftOn(StockLoad parent) =>
        parent is { Book: { } book, Roll: { IsPractice: false, Unload: not null } } ? book.Tally.ShortEnd : null;

    StockLoad Place(Roll roll, StockLot lot, Roll? parent, Footage said, int? unit) =>
        _placed[roll] = new StockLoad(roll, lot, parent, _books.GetValueOrDefault(roll), said, unit);
}
