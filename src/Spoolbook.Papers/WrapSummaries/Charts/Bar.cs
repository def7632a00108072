namespace Spoolbook.Papers.WrapSummaries.Charts;

/// <summary>A bar, with its name before it and its figure after it.</summary>
/// <param name="Value">Its length on the axis; null for no bar.</param>
/// <param name="Figure">The figure, with its unit.</param>
sealed record Bar(string Name, double? Value, string Figure);
