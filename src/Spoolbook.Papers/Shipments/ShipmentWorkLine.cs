namespace Spoolbook.Papers.Shipments;

/// <summary>What the lab has to do, as it sorts cans: a process, and a push.</summary>
public sealed record ShipmentWorkLine(string Process, string Push, string Gauge, string Cans, string Exposed, string Numbers, string Boxes);
