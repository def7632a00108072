using Spoolbook.Film;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Shoot.Accounts;

/// <summary>Turns a production into its book: the strip of every roll, and its account.</summary>
public sealed class BookKeeper
{
    readonly Production _production;

    // By the object, not the name: a careless sheet can give two rolls one name.
    readonly Dictionary<Roll, Strip?> _made = new(ReferenceEqualityComparer.Instance);

    readonly BookSlack _slack;

    BookKeeper(Production production, BookSlack slack) => (_production, _slack) = (production, slack);

    /// <summary>
    /// The book of a production. A roll of unknown length has no strip and is left out: its lot is unknown, it is a
    /// short end of a roll with nothing left, or rolls are short ends of each other.
    /// </summary>
    /// <param name="slack">Lengths too small to keep books on; the house's unless given.</param>
    public static ShootBook Keep(Production production, BookSlack? slack = null)
    {
        var keeper = new BookKeeper(production, slack ?? BookSlack.Usual);
        return new ShootBook(production, [.. production.Rolls.Select(keeper.BookOf).OfType<RollBook>()]) { Slack = keeper._slack };
    }

    RollBook? BookOf(Roll roll)
    {
        MakeWithParents(roll);
        return _made[roll] is { } strip ? new RollBook(roll, strip, Tally.Of(strip), CostLabWork.Compute(_production, roll)) : null;
    }

    // Parents first: their leftover film gives a short end its length where its can has none. A chain that comes round
    // to itself stops here.
    void MakeWithParents(Roll roll)
    {
        var waiting = new Stack<Roll>();
        var seen = new HashSet<Roll>(ReferenceEqualityComparer.Instance);
        for (var at = roll; at is not null && !_made.ContainsKey(at) && seen.Add(at); at = at.Length is null ? ParentOf(at) : null)
        {
            waiting.Push(at);
        }

        while (waiting.TryPop(out var next))
        {
            _made[next] = LengthOf(next) is { Frames: > 0 } loaded ? StripMaker.Make(_production, next, loaded, _slack.Leftover) : null;
        }
    }

    Roll? ParentOf(Roll roll) => roll.ShortEndOf is { } parent ? _production.RollNamed(parent.Value) : null;

    Footage? LengthOf(Roll roll)
    {
        if (roll.Length is { } written)
        {
            return written.Value;
        }

        if (roll.ShortEndOf is not null)
        {
            return ParentOf(roll) is { } parent && _made.TryGetValue(parent, out var strip) && strip is not null
                ? LengthOf(roll, parent, strip.Left.Length)
                : null;
        }

        return _production.LotOf(roll) is not { } lot ? null
            : roll.Unit is { } unit ? lot.Length.Value - StockStory.Off(StockStory.OfUnit(_production, lot, unit.Value, roll.Load.On.Value))
            : lot.Length.Value;
    }

    // A roll for which nothing is left of the short end has its length all the same, and no stock.
    Footage LengthOf(Roll roll, Roll parent, Footage left)
    {
        if (_production.LotOf(parent) is not { } lot)
        {
            return left;
        }

        var rolls = _production.Rolls.Where(r => r.ShortEndOf?.Value == parent.Name.Value);
        var pieces = StockPieces.Cut(_production, lot, parent, left, rolls, _slack.ShortEnd);
        return pieces.FirstOrDefault(p => ReferenceEquals(p.Roll, roll))?.Said
            ?? left - StockStory.Off(StockStory.OfShortEnd(_production, lot, parent, left, roll.Load.On.Value));
    }
}
