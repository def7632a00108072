using System.Collections.Immutable;

namespace Spoolbook.Reading.Schemas;

/// <summary>What can stand under <c>rules:</c>. Reading takes every name there; the checks know which there are.</summary>
/// <param name="Levels">Checks and groups.</param>
/// <param name="Tolerances">Tolerances.</param>
public sealed record RuleNames(ImmutableArray<RuleName> Levels, ImmutableArray<RuleName> Tolerances);
