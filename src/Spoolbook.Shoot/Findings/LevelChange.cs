using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Findings;

/// <summary>A check whose findings are raised, lowered or turned off.</summary>
/// <param name="Usual">The house's level.</param>
/// <param name="Set">The production's; null where the check is turned off.</param>
public sealed record LevelChange(string Name, Level Usual, Level? Set) : RuleChange(Name);
