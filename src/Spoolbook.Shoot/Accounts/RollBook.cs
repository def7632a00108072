using System.Collections.Immutable;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Strips;
using Spoolbook.Shoot.Walks;

namespace Spoolbook.Shoot.Accounts;

/// <summary>One roll with its strip and its account.</summary>
/// <param name="LabWork">The lab's work on it.</param>
public sealed record RollBook(Roll Roll, Strip Strip, Tally Tally, CostLabWork LabWork)
{
    /// <summary>The walk of its log, made once for all readers.</summary>
    public RollWalk Walk => Strip.Walk;

    /// <summary>The takes on the film.</summary>
    public ImmutableArray<Layer> Layers => Strip.Layers;

    /// <summary>Its dissolves, superimpositions and fades, in their order on the film.</summary>
    public ImmutableArray<Effect> Effects { get; } = Strips.Effects.Of(Strip);
}
