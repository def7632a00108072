namespace Spoolbook.Shoot.Strips;

/// <summary>When film was used, in which body, and who kept the camera.</summary>
/// <param name="On">The day.</param>
/// <param name="Body">The body, by name; null where the sheet names none.</param>
/// <param name="By">The person, by id; null where the sheet names nobody.</param>
public sealed record Custody(DateOnly On, string? Body, string? By);
