namespace Spoolbook.Shoot.Records;

/// <summary>The sheet for can labels.</summary>
/// <param name="Sheet">The sheet; by default plain paper to cut.</param>
/// <param name="Start">The first unused label of the sheet, from 1, along the rows; by default 1.</param>
public sealed record CanLabels(Place Place, Located<LabelSheet>? Sheet, Located<int>? Start);
