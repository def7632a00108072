using System.Collections.Immutable;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Shipments;

namespace Spoolbook.Papers.Shipments;

/// <summary>What the papers of a consignment are made from.</summary>
/// <param name="Bill">What it costs; null where there are no prices to add up.</param>
/// <param name="LeftOut">Exposed film that stays here.</param>
/// <param name="Record">The text of its record.</param>
/// <param name="Digest">The digest of the file that a can's roll is written in.</param>
public sealed record ShipmentPapers(
    Shipment Shipment,
    ShipmentBill? Bill,
    ImmutableArray<LeftOutRoll> LeftOut,
    string Record,
    Func<PackedCan, string> Digest
)
{
    /// <summary>What productions accepted, by their folder.</summary>
    public IReadOnlyDictionary<string, ImmutableArray<Waived>> Waived { get; init; } =
        ImmutableDictionary<string, ImmutableArray<Waived>>.Empty;
}
