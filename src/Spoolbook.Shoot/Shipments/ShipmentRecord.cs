using System.Collections.Immutable;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Shipments;

/// <summary>What went in one consignment, and what came back of it: the truth about what <c>ship</c> sent.</summary>
/// <param name="Place">Where the record begins, from the school's folder.</param>
/// <param name="Id">Its name, and that of its folder.</param>
public sealed record ShipmentRecord(Place Place, string Id, string Lab, DateOnly SentOn)
{
    /// <summary>Cans that a box held.</summary>
    public int BoxHolds { get; init; } = ShipmentWishes.UsualBox;

    /// <summary>The day by which all of it should be back; null where nobody knows.</summary>
    public DateOnly? BackBy { get; init; }

    /// <summary>The cans, in packing order.</summary>
    public ImmutableArray<ShippedCan> Cans { get; init; } = [];

    /// <summary>What came back, in the order in which it was written.</summary>
    public ImmutableArray<CanReturn> Received { get; init; } = [];

    /// <summary>The last word on a can; null while it is at the lab.</summary>
    public CanReturn? ReturnOf(ShippedCan can) => Received.LastOrDefault(r => r.Can == can.Code);

    /// <summary>Cans that are still at the lab, in packing order.</summary>
    public IEnumerable<ShippedCan> Missing => Cans.Where(c => ReturnOf(c) is null);

    /// <summary>Whether the roll in a can must not go again: it is at the lab, or came back processed.</summary>
    public bool Holds(ShippedCan can) => ReturnOf(can) is null or { State: CanState.Processed };

    /// <summary>Whether cans are missing on a day that is later than they should be back.</summary>
    public bool IsOverdue(DateOnly today) => BackBy < today && Missing.Any();
}
