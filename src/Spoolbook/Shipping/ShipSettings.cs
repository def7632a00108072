using Spoolbook.Shoot.Shipments;

namespace Spoolbook.Shipping;

/// <summary>What the command line of <c>ship</c> says.</summary>
/// <param name="School">The folder that the productions are below, as typed.</param>
/// <param name="SentOn">The day on which it goes; null for today.</param>
/// <param name="Shipments">Where consignments are kept, from there.</param>
/// <param name="Without">Productions that stay here, as typed.</param>
internal sealed record ShipSettings(
    string School,
    string? Lab,
    DateOnly? SentOn,
    int Box,
    SharedBy SharedBy,
    IReadOnlyList<string> Without,
    string Shipments,
    string? Templates,
    bool IsDryRun
);
