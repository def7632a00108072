namespace Spoolbook.Shoot.Records;

/// <summary>How much a check is to let pass.</summary>
/// <param name="Name">A tolerance's name: <c>spring-slack</c>.</param>
/// <param name="Value">As it is written; what it may be is known to the tolerance alone.</param>
public sealed record ToleranceRule(Located<string> Name, Located<string> Value);
