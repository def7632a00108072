using Spoolbook.Shoot.Accounts;

namespace Spoolbook.Shoot.Shipments;

/// <summary>A roll with exposed film that does not go, and why.</summary>
public sealed record LeftOutRoll(SchoolProduction Production, RollBook Roll, LeftOutReason Reason);
