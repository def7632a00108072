namespace Spoolbook.Shoot.Records;

/// <summary>A production's own figure for a tolerance.</summary>
/// <param name="Name">A tolerance's name: <c>spring-slack</c>.</param>
/// <param name="Value">The figure as written; only the tolerance can read it.</param>
public sealed record ToleranceRule(Located<string> Name, Located<string> Value);
