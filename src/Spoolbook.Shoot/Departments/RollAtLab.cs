namespace Spoolbook.Shoot.Departments;

/// <summary>A roll that went to the lab.</summary>
/// <param name="Roll">The roll, by name.</param>
/// <param name="Sent">The day on which it went.</param>
public sealed record RollAtLab(string Roll, DateOnly Sent);
