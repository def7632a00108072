namespace Spoolbook.Shoot.Findings;

/// <summary>A tolerance that is wider or narrower.</summary>
/// <param name="Usual">The house's figure, as written in YAML.</param>
/// <param name="Set">The production's figure.</param>
public sealed record ToleranceChange(string Name, string Usual, string Set) : RuleChange(Name);
