namespace Spoolbook.Papers.Shipments;

/// <summary>Who pays, and how much.</summary>
public sealed record ShipmentPayer(string Payer, string Productions, string Amount);
