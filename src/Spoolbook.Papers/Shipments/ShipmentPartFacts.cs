using System.Collections.Immutable;
using Spoolbook.Papers.LabOrders;

namespace Spoolbook.Papers.Shipments;

/// <summary>The part of the order for one production, which is complete when it is torn off.</summary>
public sealed record ShipmentPartFacts
{
    public required string Title { get; init; }
    public required string Code { get; init; }
    public required ImmutableArray<string> Credits { get; init; }
    public required string Invented { get; init; }
    public required string Part { get; init; }
    public required string Cans { get; init; }
    public required string Exposed { get; init; }
    public required string Numbers { get; init; }
    public required string Gauge { get; init; }
    public required ImmutableArray<string> BillTo { get; init; }
    public required ImmutableArray<string> InDoubt { get; init; }
    public required ImmutableArray<string> ReturnTo { get; init; }
    public required ImmutableArray<string> Agreed { get; init; }
    public required string NeededBy { get; init; }
    public required string ScanTakes { get; init; }
    public required string OfCans { get; init; }
    public required ImmutableArray<ShipmentCanFacts> Exceptions { get; init; }
    public required ImmutableArray<ShipmentGroup> Routine { get; init; }

    /// <summary>What the lab is to deliver; null where nothing is written.</summary>
    public required DeliverFacts? Deliver { get; init; }

    /// <summary>Whether a scan is ordered and nothing says what is to come of it.</summary>
    public required bool LacksDeliver { get; init; }

    /// <summary>Its part of the bill; empty where there is none.</summary>
    public required string Cost { get; init; }
}
