using System.Collections.Immutable;

namespace Spoolbook.Papers.Shipments;

/// <summary>Cans that are listed together.</summary>
/// <param name="Name">The process, or the box.</param>
public sealed record ShipmentGroup(string Name, string Count, string Exposed, ImmutableArray<ShipmentCanFacts> Cans)
{
    /// <summary>Whether a negative's bath would ruin any of them.</summary>
    public bool IsReversal => Cans.Any(can => can.Can.IsReversal);
}
