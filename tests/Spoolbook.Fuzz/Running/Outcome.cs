namespace Spoolbook.Fuzz.Running;

/// <summary>What came of one input.</summary>
internal sealed record Outcome(IReadOnlyList<string> Words, Find? Find, double Seconds, long Allocated);
