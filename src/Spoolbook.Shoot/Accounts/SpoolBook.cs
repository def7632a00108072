using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Accounts;

/// <summary>
/// The empty take-up spools of the kit, counted from load to load. A roll takes one when it is loaded. Unloaded, it
/// goes to the lab on that one and leaves its own, unless film is left on it. A roll on which nothing was shot keeps its
/// own, and leaves the one that it took.
/// </summary>
public sealed record SpoolBook
{
    /// <summary>The kit's items that are empty spools; without any, nobody counts them.</summary>
    public required ImmutableArray<KitItem> Items { get; init; }

    /// <summary>The first roll without a spool; null where each had one.</summary>
    public required Roll? FirstWithout { get; init; }

    /// <summary>Empty spools left; below zero where there were too few.</summary>
    public required int Empty { get; init; }

    /// <summary>Rolls in the cameras; each leaves its spool when it is run off.</summary>
    public required int InCameras { get; init; }

    /// <summary>Spools that went to the lab with the exposed film of unloaded rolls.</summary>
    public required int Gone { get; init; }

    /// <summary>Empty spools that came with the kit.</summary>
    public int InKit => Items.Sum(i => i.Returned.Out);

    /// <summary>Spools for the next rolls, once the film in the cameras is run off.</summary>
    public int ForTheNext => Empty + InCameras;

    /// <summary>The spools of a shoot.</summary>
    internal static SpoolBook Keep(ShootBook book)
    {
        var items = book.Production.Items.Where(i => i.TakeUp?.Value == true).ToImmutableArray();
        var rolls = book.Rolls.Select(r => (Book: r, Out: TakenOut(book, r))).ToList();
        var changes = rolls.SelectMany(r => Changes(r.Book, r.Out)).OrderBy(c => c.On).ThenByDescending(c => c.Change);
        var empty = items.Sum(i => i.Returned.Out);
        Roll? without = null;
        foreach (var (_, roll, change) in changes)
        {
            empty += change;
            without ??= empty < 0 && !items.IsEmpty ? roll : null;
        }

        return new SpoolBook
        {
            Items = items,
            FirstWithout = without,
            Empty = empty,
            InCameras = rolls.Count(r => r.Out is null),
            Gone = rolls.Count(r => r.Out is not null && !IsRaw(r.Book)),
        };
    }

    static IEnumerable<(DateTime On, Roll Roll, int Change)> Changes(RollBook roll, DateTime? takenOut)
    {
        yield return (roll.Roll.Load.On.Value, roll.Roll, -1);
        if (takenOut is { } on && (roll.Tally.ShortEnd == Footage.Zero || IsRaw(roll)))
        {
            yield return (on, roll.Roll, 1);
        }
    }

    static bool IsRaw(RollBook roll) => roll.Roll is { IsUnshot: true, GoesToLab: false };

    // Where no time of unloading is written, the next roll in the same body gives it.
    static DateTime? TakenOut(ShootBook book, RollBook roll) =>
        roll.Roll.Unload?.On.Value
        ?? book.Rolls.Where(r => r.Roll.Body?.Value == roll.Roll.Body?.Value && r.Roll.Load.On.Value > roll.Roll.Load.On.Value)
            .Select(r => (DateTime?)r.Roll.Load.On.Value)
            .Min();
}
