namespace Spoolbook.Papers.WrapSummaries;

/// <summary>A figure to see at a glance.</summary>
public sealed record Glance(string Value, string What);
