using System.Collections.Immutable;
using Spoolbook.Papers.Facts;

namespace Spoolbook.Papers.LabOrders;

/// <summary>The facts of the lab order: one for each consignment.</summary>
public sealed record LabOrderFacts(PaperHead Head) : PaperFacts(Head)
{
    public required bool HasLab { get; init; }
    public required string Lab { get; init; }
    public required ImmutableArray<string> Address { get; init; }
    public required ImmutableArray<string> Contact { get; init; }
    public required ImmutableArray<string> ReturnTo { get; init; }
    public required ImmutableArray<string> BillTo { get; init; }
    public required ImmutableArray<string> InDoubt { get; init; }
    public required string Gauge { get; init; }
    public required ImmutableArray<string> Agreed { get; init; }
    public required string NeededBy { get; init; }

    /// <summary>Cans with something of their own to do or to know.</summary>
    public required ImmutableArray<CanFacts> Exceptions { get; init; }

    /// <summary>How many of the cans these are.</summary>
    public required string OfCans { get; init; }

    /// <summary>What they are exceptions for, costliest first, with their rolls: none is missed, whichever page it is on.</summary>
    public required ImmutableArray<ExceptionKind> Kinds { get; init; }

    /// <summary>All other cans, by process.</summary>
    public required ImmutableArray<OrderGroup> Routine { get; init; }
    public required ImmutableArray<KeptBack> NotSent { get; init; }
    public required string Cans { get; init; }
    public required string Exposed { get; init; }

    /// <summary>What the lab is to deliver; null where nothing is written.</summary>
    public required DeliverFacts? Deliver { get; init; }

    /// <summary>Whether a scan is ordered and nothing says what is to come of it.</summary>
    public required bool LacksDeliver { get; init; }

    /// <summary>Which takes to scan, in a sentence; empty where no scan is ordered.</summary>
    public required string ScanTakes { get; init; }

    /// <summary>Which consignment of how many; empty where there is only one.</summary>
    public required string Consignment { get; init; }

    /// <summary>The day on which it went.</summary>
    public required string SentOn { get; init; }

    /// <summary>How it goes; empty where it is not written.</summary>
    public required string How { get; init; }

    /// <summary>The carrier's or the lab's receipt; empty where it is not written.</summary>
    public required string Receipt { get; init; }

    /// <summary>Boxes; empty where it is not written.</summary>
    public required string Boxes { get; init; }

    /// <summary>That rolls for the lab are still in a camera, so that another can may come; empty where none can.</summary>
    public required string NotFinal { get; init; }

    public required string LengthUnit { get; init; }
    public required CostFacts Cost { get; init; }
}
