using System.Collections.Immutable;

namespace Spoolbook.Papers.LabOrders;

/// <summary>Rolls with the same process and push.</summary>
/// <param name="Pushed">Whether to print the push prominently.</param>
public sealed record OrderGroup(string Process, string Push, bool Pushed, string Count, string Exposed, ImmutableArray<CanFacts> Cans);
