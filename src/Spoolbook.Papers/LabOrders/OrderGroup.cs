using System.Collections.Immutable;

namespace Spoolbook.Papers.LabOrders;

/// <summary>Rolls that get the same process and the same push.</summary>
/// <param name="Pushed">Whether the push is to stand out.</param>
public sealed record OrderGroup(string Process, string Push, bool Pushed, string Count, string Exposed, ImmutableArray<CanFacts> Cans);
