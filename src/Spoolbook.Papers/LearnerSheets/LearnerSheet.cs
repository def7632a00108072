namespace Spoolbook.Papers.LearnerSheets;

/// <summary>The sheet of one learner.</summary>
/// <param name="Name">Who learns.</param>
/// <param name="Practised">The practice rolls that they loaded, and when; empty for none.</param>
public sealed record LearnerSheet(string Name, string Practised);
