namespace Spoolbook.Shoot.Findings;

/// <summary>A tolerance that is wider or narrower.</summary>
/// <param name="Usual">What the house lets pass, as it is written in YAML.</param>
/// <param name="Set">What the production lets pass.</param>
public sealed record ToleranceChange(string Name, string Usual, string Set) : RuleChange(Name);
