namespace Spoolbook.Papers.WrapSummaries.Charts;

/// <summary>A bar with its name before it and its figure behind it.</summary>
/// <param name="Value">Its length on the axis; null where there is none to draw.</param>
/// <param name="Figure">What it says, with its unit.</param>
sealed record Bar(string Name, double? Value, string Figure);
