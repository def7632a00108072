namespace Spoolbook.Shoot.Records;

/// <summary>What can labels are printed on.</summary>
/// <param name="Sheet">The sheet; plain paper to cut unless written.</param>
/// <param name="Start">The first label of the sheet that is still there, from 1, along the rows; 1 unless written.</param>
public sealed record CanLabels(Place Place, Located<LabelSheet>? Sheet, Located<int>? Start);
