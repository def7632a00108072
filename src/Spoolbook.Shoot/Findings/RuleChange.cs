namespace Spoolbook.Shoot.Findings;

/// <summary>A production's own rule that differs from the house's.</summary>
/// <param name="Name">A check, <c>speed/spring-overrun</c>, or a tolerance, <c>spring-slack</c>.</param>
public abstract record RuleChange(string Name);
