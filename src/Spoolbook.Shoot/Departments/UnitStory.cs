using System.Collections.Immutable;

namespace Spoolbook.Shoot.Departments;

/// <summary>Follows one unit of the school's stock from hand to hand. It is in one place at every moment, whatever is written.</summary>
sealed class UnitStory
{
    readonly ImmutableArray<ProductionShare> _shares;
    readonly List<UnitEvent> _events = [];
    readonly List<HandOver> _disagreements = [];
    string? _holder;
    UnitEvent? _taken;
    UnitEvent? _onTheWay;

    UnitStory(ImmutableArray<ProductionShare> shares) => _shares = shares;

    /// <summary>The unit with its last holder. What two productions do not agree on is added to a list.</summary>
    public static ShelfUnit Follow(
        string lot,
        int number,
        IEnumerable<UnitEvent> written,
        ImmutableArray<ProductionShare> shares,
        ImmutableArray<HandOver>.Builder disagreements
    )
    {
        var story = new UnitStory(shares);
        foreach (var day in written.GroupBy(e => DateOnly.FromDateTime(e.At)).OrderBy(g => g.Key))
        {
            story.Live([.. day.OrderBy(e => e.At)]);
        }

        story.End();
        disagreements.AddRange(story._disagreements);
        return new ShelfUnit(lot, number, story._holder, [.. story._events]);
    }

    // Hours of two productions seldom agree: of one day's entries, the one that can be true comes next.
    void Live(List<UnitEvent> left)
    {
        while (left.MinBy(Order) is { } next)
        {
            left.Remove(next);
            _events.Add(next);
            Take(next);
        }
    }

    int Order(UnitEvent e)
    {
        var (loaded, went, came) = _holder is null ? (1, 2, 0) : (0, 1, 2);
        var own = e.Kind switch
        {
            UnitEventKind.Loaded => loaded,
            UnitEventKind.Went => went,
            _ => came,
        };
        var isNext = _holder is not null ? _holder == e.Production : IsExpected(e);
        return isNext ? own : own + 10;
    }

    bool IsExpected(UnitEvent e) => _onTheWay is not null && _shares.Any(s => s.Name == e.Production && s.IsNamed(_onTheWay.Other));

    void Take(UnitEvent next)
    {
        if (next.Kind == UnitEventKind.Went)
        {
            (_holder, _taken) = (null, null);
            _onTheWay = _shares.Any(s => s.Name != next.Production && s.IsNamed(next.Other)) ? next : null;
            return;
        }

        if (_holder is not null && _holder != next.Production)
        {
            var isHandedOver = _shares.Any(s => s.Name == _holder && s.IsNamed(next.Other));
            _disagreements.Add(new HandOver(next, _taken, _holder, isHandedOver));
        }

        if (_onTheWay is not null && !IsExpected(next))
        {
            _disagreements.Add(new HandOver(_onTheWay, next, next.Production, IsOneSided: true));
        }

        _taken = _holder == next.Production ? _taken : next;
        (_holder, _onTheWay) = (next.Production, null);
    }

    void End()
    {
        if (_onTheWay is { } sent)
        {
            _disagreements.Add(
                new HandOver(sent, null, _shares.First(s => s.Name != sent.Production && s.IsNamed(sent.Other)).Name, IsOneSided: true)
            );
        }
    }
}
