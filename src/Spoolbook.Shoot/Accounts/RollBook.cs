using System.Collections.Immutable;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Strips;
using Spoolbook.Shoot.Walks;

namespace Spoolbook.Shoot.Accounts;

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
