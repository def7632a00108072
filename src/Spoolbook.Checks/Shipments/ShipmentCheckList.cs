using System.Collections.Immutable;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Shipments;

/// <summary>What `ship` finds before a consignment goes. Shoot reports it under the same names; a test compares the two lists.</summary>
static class ShipmentCheckList
{
    /// <summary>All of them.</summary>
    public static ImmutableArray<Check> All { get; } =
    [
        Of("shipment/address-differs", Level.Warning),
        Of("shipment/cannot-be-read", Level.Error),
        Of("shipment/code-went-before", Level.Error),
        Of("shipment/labs-alike", Level.Warning),
        Of("shipment/no-process", Level.Error),
        Of("shipment/prices-differ", Level.Warning),
        Of("shipment/process-not-run", Level.Error),
        Of("shipment/production-with-errors", Level.Error),
        Of("shipment/reads-alike", Level.Error),
        Of("shipment/same-code", Level.Error),
        Of("shipment/same-title", Level.Warning),
    ];

    static StageCheck Of(string name, Level level) => new(name, level, Round.Shipping);
}
