namespace Spoolbook.Papers.LabOrders;

/// <summary>Rolls that are not in the box, and why.</summary>
public sealed record KeptBack(string Roll, string Why);
