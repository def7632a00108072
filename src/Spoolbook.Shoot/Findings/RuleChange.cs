namespace Spoolbook.Shoot.Findings;

/// <summary>Something that the production's own rules set otherwise than the house does.</summary>
/// <param name="Name">A check, <c>speed/spring-overrun</c>, or a tolerance, <c>spring-slack</c>.</param>
public abstract record RuleChange(string Name);
