using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Accounts;

/// <summary>
/// Cuts a short end into the rolls that were loaded from it and what stays in its can. A roll takes the length that is
/// written on it, or all there is; the last one also takes a rest too small to be a piece. A split in the stock log
/// says the pieces beforehand, and each roll takes the one nearest to its length.
/// </summary>
sealed class StockPieces
{
    readonly List<StockPiece> _pieces = [];
    readonly Production _production;
    readonly StockLot _lot;
    readonly Roll _parent;
    readonly Footage _slack;
    Footage _left;

    StockPieces(Production production, StockLot lot, Roll parent, Footage left, Footage slack) =>
        (_production, _lot, _parent, _left, _slack) = (production, lot, parent, left, slack);

    /// <summary>The pieces of a short end, in the order they were cut. No roll is in two, and one with nothing left is in none.</summary>
    /// <param name="left">Film left on the parent once it was unloaded.</param>
    /// <param name="rolls">The rolls that are said to come from it; those for shooting get theirs before those for practice.</param>
    /// <param name="slack">A rest that is no piece of its own.</param>
    public static ImmutableArray<StockPiece> Cut(
        Production production,
        StockLot lot,
        Roll parent,
        Footage left,
        IEnumerable<Roll> rolls,
        Footage slack
    )
    {
        var pieces = new StockPieces(production, lot, parent, left, slack);
        pieces.Cut(
            new Queue<Roll>(rolls.OrderBy(r => r.IsPractice).ThenBy(r => r.Load.On.Value).ThenBy(r => r.Name.Value, StringComparer.Ordinal))
        );
        return [.. pieces._pieces];
    }

    void Cut(Queue<Roll> rolls)
    {
        while (_left > Footage.Zero && rolls.TryPeek(out var roll))
        {
            var moves = Moves(roll.Load.On.Value);
            if (Split(moves, rolls))
            {
                return;
            }

            rolls.Dequeue();
            var inCan = _left - StockStory.Off(moves);
            var all =
                roll.Length is not { Value: { Frames: > 0 } length } || length >= inCan || (rolls.Count == 0 && inCan - length <= _slack);
            if (all)
            {
                _pieces.Add(new StockPiece(_pieces.Count + 1, _left, inCan, roll, moves));
                _left = Footage.Zero;
            }
            else
            {
                // Up to then it was wherever the whole short end was.
                var (cut, on) = (roll.Length!.Value, roll.Load.On.Value);
                var own = StockStory.OfPiece(_production, _lot, _parent, cut, cut, on, e => e.At <= on && e.Piece is null && !IsOfCan(e));
                _pieces.Add(new StockPiece(_pieces.Count + 1, cut, cut, roll, own));
                _left -= cut;
            }
        }

        if (_left > Footage.Zero)
        {
            var moves = Moves(null);
            if (Split(moves, rolls))
            {
                return;
            }

            _pieces.Add(new StockPiece(_pieces.Count + 1, _left, _left - StockStory.Off(moves), null, moves));
        }
    }

    // What was thrown away before the split or in it was on the last piece.
    bool Split(ImmutableArray<StockMove> moves, Queue<Roll> rolls)
    {
        if (moves.FirstOrDefault(m => m is { Counts: true, Entry: StockSplit }) is not { } cut)
        {
            return false;
        }

        var split = (StockSplit)cut.Entry;
        var lengths = split.Into.Select(l => l.Value).ToList();
        var inCan = _left - StockStory.Off(moves.TakeWhile(m => m != cut));
        var rest = inCan - StockBook.Sum(lengths, l => l);
        if (rest > _slack)
        {
            lengths.Add(rest);
        }

        var waiting = Enumerable.Range(0, lengths.Count).ToList();
        var loaded = new Roll?[lengths.Count];
        while (waiting.Count > 0 && rolls.TryDequeue(out var roll))
        {
            var piece = roll.Length is { Value: var length } ? waiting.MinBy(i => Math.Abs((lengths[i] - length).Frames)) : waiting[0];
            loaded[piece] = roll;
            waiting.Remove(piece);
        }

        var first = _pieces.Count + 1;
        foreach (var (i, length) in lengths.Index())
        {
            var isLast = i == lengths.Count - 1;
            var film = isLast ? _left - StockBook.Sum(lengths.SkipLast(1), l => l) : length;
            var number = first + i;
            var own = StockStory.OfPiece(_production, _lot, _parent, film, length, loaded[i]?.Load.On.Value, e =>
                isLast ? e.Piece is null || e.Piece.Value == number : IsOfPiece(e, split, number)
            );
            _pieces.Add(new StockPiece(number, film, film - StockStory.Off(own), loaded[i], own));
        }

        _left = Footage.Zero;
        return true;
    }

    // An entry that names no piece is about all of them, but an end thrown away is thrown away once.
    static bool IsOfPiece(StockEntry entry, StockSplit split, int number) =>
        entry.Piece is { } piece ? entry is not StockSplit && entry.At >= split.At && piece.Value == number : !IsOfCan(entry);

    static bool IsOfCan(StockEntry entry) => entry is StockSplit or StockRecanned;

    ImmutableArray<StockMove> Moves(DateTime? loaded) => StockStory.OfShortEnd(_production, _lot, _parent, _left, loaded);
}
