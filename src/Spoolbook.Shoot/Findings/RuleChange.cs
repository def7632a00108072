using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Findings;

/// <summary>Something that the production's own rules set otherwise than the house does.</summary>
/// <param name="Name">A check, <c>speed/spring-overrun</c>, or a tolerance, <c>spring-slack</c>.</param>
public abstract record RuleChange(string Name);

/// <summary>A check whose findings are graver, less grave, or not told.</summary>
/// <param name="Usual">The house's level.</param>
/// <param name="Set">The production's; null where the check is turned off.</param>
public sealed record LevelChange(string Name, Level Usual, Level? Set) : RuleChange(Name);

/// <summary>A tolerance that is wider or narrower.</summary>
/// <param name="Usual">What the house lets pass, as it is written in YAML.</param>
/// <param name="Set">What the production lets pass.</param>
public sealed record ToleranceChange(string Name, string Usual, string Set) : RuleChange(Name);
