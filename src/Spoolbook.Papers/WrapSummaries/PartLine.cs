using Spoolbook.Papers.Facts;

namespace Spoolbook.Papers.WrapSummaries;

/// <summary>How one part of the shoot used its film.</summary>
public sealed record PartLine(string Name, TallyFacts Tally, string Screen, string Ratio, string WasteRate, string Takes, string TakesEach);
