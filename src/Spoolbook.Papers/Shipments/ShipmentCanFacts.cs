using Spoolbook.Papers.LabOrders;

namespace Spoolbook.Papers.Shipments;

/// <summary>A can on a consignment's order.</summary>
/// <param name="Number">Its place in the packing order.</param>
public sealed record ShipmentCanFacts(string Number, string Box, string Production, CanFacts Can);
