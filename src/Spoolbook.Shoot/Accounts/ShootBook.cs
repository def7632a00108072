using System.Collections.Immutable;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Accounts;

/// <summary>A production with the strip and the account of each of its rolls: what checks and papers read.</summary>
/// <param name="Rolls">Every roll with a strip, in the production's order, practice rolls included.</param>
public sealed record ShootBook(Production Production, ImmutableArray<RollBook> Rolls)
{
    /// <summary>Lengths that were too small to keep books on.</summary>
    public BookSlack Slack { get; init; } = BookSlack.Usual;

    /// <summary>The rolls that count: all but practice rolls.</summary>
    public IEnumerable<RollBook> Counted => Rolls.Where(r => !r.Roll.IsPractice);

    /// <summary>The rolls that go to the lab, in order.</summary>
    public IEnumerable<RollBook> Sent => Counted.Where(r => r.Roll is { Unload: not null, GoesToLab: true });

    /// <summary>The unloaded rolls whose cans hold exposed film: all but those on which nothing was shot and that stay here.</summary>
    public IEnumerable<RollBook> ExposedCans => Counted.Where(r => r.Roll.Unload is not null && (!r.Roll.IsUnshot || r.Roll.GoesToLab));

    /// <summary>All counted rolls together.</summary>
    public Tally Total => Counted.Aggregate(Tally.Empty, (sum, roll) => sum + roll.Tally);

    /// <summary>All counted rolls split up by take, scene, day, …; the shares add up to <see cref="Total"/>.</summary>
    public ImmutableArray<Share> By(Sharing sharing) => Shares.Split(Production, Counted, sharing);
}
