namespace Spoolbook.Entry.Logging;

/// <summary>The remark of an entry that a line changes.</summary>
/// <param name="Was">What it was; null where there was none.</param>
/// <param name="Now">What it is; null where it goes.</param>
public sealed record ChangedRemark(string? Was, string? Now);
