using System.Collections.Immutable;

namespace Spoolbook.Papers.LabOrders;

/// <summary>Routine cans with the same process.</summary>
public sealed record OrderGroup(string Process, string Count, string Exposed, ImmutableArray<CanFacts> Cans)
{
    /// <summary>Whether a negative's bath would ruin them, so that the process stands out.</summary>
    public bool IsReversal => Cans.Any(can => can.IsReversal);
}
