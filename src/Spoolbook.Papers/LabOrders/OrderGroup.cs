using System.Collections.Immutable;

namespace Spoolbook.Papers.LabOrders;

/// <summary>Routine cans with the same process.</summary>
public sealed record OrderGroup(string Process, string Count, string Exposed, ImmutableArray<CanFacts> Cans);
