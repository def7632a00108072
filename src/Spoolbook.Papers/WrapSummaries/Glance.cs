namespace Spoolbook.Papers.WrapSummaries;

/// <summary>A figure to be seen at a glance.</summary>
public sealed record Glance(string Value, string What);
