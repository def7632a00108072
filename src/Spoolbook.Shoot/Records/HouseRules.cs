using System.Collections.Immutable;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Shoot.Records;

/// <summary>What a department set once for every check of a production: how grave findings are, and how much is let pass.</summary>
public sealed record HouseRules(Place Place)
{
    /// <summary>Levels by the name of a check or of a group, in the order in which they are written.</summary>
    public ImmutableArray<LevelRule> Levels { get; init; } = [];

    /// <summary>Tolerances by name, in the order in which they are written.</summary>
    public ImmutableArray<ToleranceRule> Tolerances { get; init; } = [];
}

/// <summary>How grave the findings of a check, or of a whole group, are to be.</summary>
/// <param name="Name">A check, <c>speed/spring-overrun</c>, or a group, <c>speed</c>.</param>
/// <param name="Level">The level; null for a check that is turned off.</param>
public sealed record LevelRule(Located<string> Name, Located<Level?> Level);

/// <summary>How much a check is to let pass.</summary>
/// <param name="Name">A tolerance's name: <c>spring-slack</c>.</param>
/// <param name="Value">As it is written; what it may be is known to the tolerance alone.</param>
public sealed record ToleranceRule(Located<string> Name, Located<string> Value);
