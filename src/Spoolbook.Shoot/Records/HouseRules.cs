using System.Collections.Immutable;

namespace Spoolbook.Shoot.Records;

/// <summary>What a department set once for every check of a production: how grave findings are, and how much is let pass.</summary>
public sealed record HouseRules(Place Place)
{
    /// <summary>Levels by the name of a check or of a group, in the order in which they are written.</summary>
    public ImmutableArray<LevelRule> Levels { get; init; } = [];

    /// <summary>Tolerances by name, in the order in which they are written.</summary>
    public ImmutableArray<ToleranceRule> Tolerances { get; init; } = [];
}
