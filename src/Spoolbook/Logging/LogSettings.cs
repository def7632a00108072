namespace Spoolbook.Logging;

/// <summary>How lines are taken.</summary>
/// <param name="Production">The production's path, as typed or found.</param>
/// <param name="DryRun">Whether to write nothing.</param>
/// <param name="Anyway">Whether to write what contradicts the record.</param>
/// <param name="IsJson">Whether a program reads the answer.</param>
internal sealed record LogSettings(string Production, bool DryRun, bool Anyway, bool IsJson);
