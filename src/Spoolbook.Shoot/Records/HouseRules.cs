using System.Collections.Immutable;

namespace Spoolbook.Shoot.Records;

/// <summary>A department's own levels and tolerances for every check of a production.</summary>
public sealed record HouseRules(Place Place)
{
    /// <summary>Levels by the name of a check or a group, in the order written.</summary>
    public ImmutableArray<LevelRule> Levels { get; init; } = [];

    /// <summary>Tolerances by name, in the order written.</summary>
    public ImmutableArray<ToleranceRule> Tolerances { get; init; } = [];
}
