using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Accounts;

/// <summary>
/// Follows one can through the stock log. An impossible entry is kept with its fault and does not count. Where the log
/// and a roll contradict each other, the roll is right: an assistant had it in hand.
/// </summary>
sealed class StockStory
{
    readonly List<StockMove> _moves = [];
    readonly StockLot _lot;
    readonly int? _unit;
    readonly Roll? _parent;
    readonly DateTime? _loaded;
    Footage _film;
    StockEntry? _gone;
    bool _isHere;
    bool _isLoaded;
    bool _isSplit;
    Footage? _cutTo;

    StockStory(StockLot lot, int? unit, Roll? parent, Footage film, DateTime? loaded)
    {
        (_lot, _unit, _parent, _film, _loaded) = (lot, unit, parent, film, loaded);
        _isHere = unit is { } number ? number <= lot.Units.Value : film > Footage.Zero;
    }

    /// <summary>The log's entries about a unit.</summary>
    /// <param name="loaded">When it was loaded; null where it was not.</param>
    public static ImmutableArray<StockMove> OfUnit(Production production, StockLot lot, int unit, DateTime? loaded) =>
        new StockStory(lot, unit, null, lot.Length.Value, loaded).Follow(production.StockLog.Where(e => Touches(e, lot, unit)));

    /// <summary>The log's entries about a short end.</summary>
    /// <param name="left">Film left on its parent once that was unloaded; none where there is no short end.</param>
    /// <param name="loaded">When it was loaded; null where it was not.</param>
    public static ImmutableArray<StockMove> OfShortEnd(Production production, StockLot lot, Roll parent, Footage left, DateTime? loaded) =>
        new StockStory(lot, null, parent, left, loaded).Follow(production.StockLog.Where(e => e.ShortEndOf?.Value == parent.Name.Value));

    /// <summary>The log's entries about a piece of a short end, as far as they concern it.</summary>
    /// <param name="film">Film in it at first.</param>
    /// <param name="cutTo">Film that the split left in it.</param>
    public static ImmutableArray<StockMove> OfPiece(
        Production production,
        StockLot lot,
        Roll parent,
        Footage film,
        Footage cutTo,
        DateTime? loaded,
        Func<StockEntry, bool> concerns
    ) =>
        new StockStory(lot, null, parent, film, loaded) { _cutTo = cutTo }.Follow(
            production.StockLog.Where(e => e.ShortEndOf?.Value == parent.Name.Value && concerns(e))
        );

    /// <summary>Film thrown away in some moves.</summary>
    public static Footage Off(IEnumerable<StockMove> moves) => StockBook.Sum(moves.Where(m => m.IsOff), m => Footage.Zero - m.Change);

    /// <summary>The units that an entry names, each once.</summary>
    public static IEnumerable<int> UnitsOf(StockEntry entry) => entry.Units.Select(u => u.Value).Distinct();

    static bool Touches(StockEntry entry, StockLot lot, int unit) =>
        entry.Lot?.Value == lot.Name.Value && entry.Units.Any(u => u.Value == unit);

    ImmutableArray<StockMove> Follow(IEnumerable<StockEntry> entries)
    {
        foreach (var entry in entries.Where(Moves).OrderBy(e => e.At))
        {
            LoadBefore(entry.At);
            Take(entry);
        }

        LoadBefore(DateTime.MaxValue);
        Settle();
        return [.. _moves];
    }

    static bool Moves(StockEntry entry) => entry is StockCame or StockSentAway or StockLost or StockDamaged or StockRecanned or StockSplit;

    void Settle()
    {
        int? gone = null;
        foreach (var (i, move) in _moves.ToList().Index().Where(m => m.Item is { Counts: true, IsOff: false }))
        {
            if (move.Entry is not StockCame)
            {
                gone = i;
            }
            else if (gone is { } went)
            {
                (_moves[went], _moves[i], gone) = (_moves[went] with { Lasts = false }, move with { Lasts = false }, null);
            }
        }
    }

    void LoadBefore(DateTime at)
    {
        if (_isLoaded || _loaded is not { } loaded || loaded > at)
        {
            return;
        }

        _isLoaded = true;
        if (_gone is not null)
        {
            // It was loaded, so it cannot have gone.
            var went = _moves.FindLastIndex(m => ReferenceEquals(m.Entry, _gone));
            _moves[went] = _moves[went] with { Fault = StockFault.LoadedAfterwards };
            (_gone, _isHere) = (null, true);
        }
    }

    void Take(StockEntry entry)
    {
        var fault = FaultOf(entry);
        var film = entry switch
        {
            StockRecanned recanned => recanned.Off?.Value ?? Footage.Zero,
            StockSplit split => Footage.Max(Footage.Zero, _film - Pieces(split)),
            _ => _film,
        };
        var move = new StockMove(entry, _lot, _unit, _parent, entry.At, film, fault);
        _moves.Add(fault == StockFault.LoadedBefore ? move with { At = _loaded!.Value } : move);
        if (!move.Counts)
        {
            return;
        }

        switch (entry)
        {
            case StockCame:
                (_isHere, _gone) = (true, null);
                break;
            case StockRecanned:
                _film -= film;
                break;
            case StockSplit:
                (_film, _isSplit) = (_film - film, true);
                break;
            default:
                (_isHere, _gone) = (false, entry);
                break;
        }
    }

    StockFault? FaultOf(StockEntry entry) =>
        entry switch
        {
            _ when _parent is not null && !IsMade(entry.At) => StockFault.NeverHere,
            StockCame when _isLoaded && !_isHere => StockFault.LoadedBefore,
            _ when _isLoaded => StockFault.Loaded,
            StockCame when _isHere => StockFault.HereAlready,
            StockCame when _gone is StockDamaged => StockFault.Damaged,
            StockCame => null,
            _ when _gone is not null => _gone switch
            {
                StockSentAway => StockFault.SentAway,
                StockLost => StockFault.Lost,
                _ => StockFault.Damaged,
            },
            _ when !_isHere => StockFault.NeverHere,
            StockRecanned { Off.Value: var off } when off >= _film => StockFault.MoreThanInIt,
            StockSplit when _isSplit => StockFault.SplitAlready,
            StockSplit split when split.Into.IsEmpty || split.Into.Any(l => l.Value <= Footage.Zero) || Pieces(split) > _film =>
                StockFault.MoreThanInIt,
            _ => null,
        };

    Footage Pieces(StockSplit split) => _cutTo ?? StockBook.Sum(split.Into, l => l.Value);

    bool IsMade(DateTime at) => _film > Footage.Zero && _parent!.Unload is { } unload && unload.On.Value <= at;
}
