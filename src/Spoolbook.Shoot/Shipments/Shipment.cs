using System.Collections.Immutable;
using Spoolbook.Film;

namespace Spoolbook.Shoot.Shipments;

/// <summary>One consignment to one lab, out of the cans of several productions.</summary>
/// <param name="Id">Its name, and that of its folder: the day and the lab.</param>
/// <param name="Lab">The lab, as the first production in it writes it.</param>
/// <param name="Cans">In packing order; at least one.</param>
public sealed record Shipment(string Id, string Lab, DateOnly SentOn, int BoxHolds, ImmutableArray<PackedCan> Cans)
{
    /// <summary>The day by which all of it is back, by the longest time that its productions write; null where none does.</summary>
    public DateOnly? BackBy { get; init; }

    /// <summary>Boxes.</summary>
    public int Boxes => Cans[^1].Box;

    /// <summary>Film in all cans, in feet.</summary>
    public Ratio Feet => Cans.Aggregate(Ratio.Zero, (sum, c) => sum + c.Feet);

    /// <summary>The productions in it, by code.</summary>
    public ImmutableArray<SchoolProduction> Productions { get; } =
    [
        .. Cans.Select(c => c.Production)
            .Distinct()
            .OrderBy(p => p.Code, StringComparer.Ordinal)
            .ThenBy(p => p.Folder, StringComparer.Ordinal),
    ];

    /// <summary>The cans of one production, in packing order.</summary>
    public ImmutableArray<PackedCan> Of(SchoolProduction production) => [.. Cans.Where(c => c.Production == production)];
}
