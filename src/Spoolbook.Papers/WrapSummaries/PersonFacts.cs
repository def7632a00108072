namespace Spoolbook.Papers.WrapSummaries;

/// <summary>Someone of the crew.</summary>
public sealed record PersonFacts(string Name, string Role);
