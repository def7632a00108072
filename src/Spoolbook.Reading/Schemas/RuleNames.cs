using System.Collections.Immutable;

namespace Spoolbook.Reading.Schemas;

/// <summary>What is allowed under <c>rules:</c>. Reading takes every name; only the checks know which ones there are.</summary>
/// <param name="Levels">Checks and groups.</param>
public sealed record RuleNames(ImmutableArray<RuleName> Levels, ImmutableArray<RuleName> Tolerances);
