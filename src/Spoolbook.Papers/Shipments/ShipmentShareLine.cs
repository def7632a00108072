namespace Spoolbook.Papers.Shipments;

/// <summary>A production's part of the bill, or the sum of all.</summary>
public sealed record ShipmentShareLine(
    string Production,
    string Film,
    string Work,
    string Minimum,
    string Shipping,
    string Tax,
    string Total
);
