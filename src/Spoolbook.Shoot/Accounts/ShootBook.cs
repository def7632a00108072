using System.Collections.Immutable;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Strips;
using Spoolbook.Shoot.Walks;

namespace Spoolbook.Shoot.Accounts;

/// <summary>A production with the strip and the account of each of its rolls: what checks and papers read.</summary>
/// <param name="Rolls">Every roll whose records let a strip be made, in the production's order; practice rolls among them.</param>
public sealed record ShootBook(Production Production, ImmutableArray<RollBook> Rolls)
{
    /// <summary>The rolls that count: all but practice rolls.</summary>
    public IEnumerable<RollBook> Counted => Rolls.Where(r => !r.Roll.IsPractice);

    /// <summary>The rolls that go to the lab, in order.</summary>
    public IEnumerable<RollBook> Sent => Counted.Where(r => r.Roll.Unload is not null && (r.Roll.Lab?.Send?.Value ?? true));

    /// <summary>All counted rolls together.</summary>
    public Tally Total => Counted.Aggregate(Tally.Empty, (sum, roll) => sum + roll.Tally);

    /// <summary>All counted rolls shared out by take, scene, day, …; the shares add up to <see cref="Total"/>.</summary>
    public ImmutableArray<Share> By(Sharing sharing) => Shares.Of(Production, Counted, sharing);
}

/// <summary>One roll with its strip and its account.</summary>
/// <param name="LabWork">What the lab is asked to do with it.</param>
public sealed record RollBook(Roll Roll, Strip Strip, Tally Tally, CostLabWork LabWork)
{
    /// <summary>Its log as it was followed, once for all who ask.</summary>
    public RollWalk Walk => Strip.Walk;

    /// <summary>The takes as they lie on the film.</summary>
    public ImmutableArray<Layer> Layers => Strip.Layers;

    /// <summary>Its dissolves, superimpositions and fades, in the order in which they lie on the film.</summary>
    public ImmutableArray<Effect> Effects { get; } = Strips.Effects.Of(Strip);
}
