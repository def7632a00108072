namespace Spoolbook.Shoot.Records;

/// <summary>The level for the findings of a check, or of a whole group.</summary>
/// <param name="Name">A check, <c>speed/spring-overrun</c>, or a group, <c>speed</c>.</param>
/// <param name="Level">The level; null for a check that is turned off.</param>
public sealed record LevelRule(Located<string> Name, Located<Level?> Level);
