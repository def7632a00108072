namespace Spoolbook.Papers.WrapSummaries;

/// <summary>A member of the crew.</summary>
public sealed record PersonFacts(string Name, string Role);
