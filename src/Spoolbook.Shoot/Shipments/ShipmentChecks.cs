using System.Collections.Immutable;

namespace Spoolbook.Shoot.Shipments;

/// <summary>The names of what is found before a consignment goes. Each has its page among the checks.</summary>
public static class ShipmentChecks
{
    /// <summary>Two productions write different addresses of one lab.</summary>
    public const string AddressDiffers = "shipment/address-differs";

    /// <summary>A production that cannot be read.</summary>
    public const string CannotBeRead = "shipment/cannot-be-read";

    /// <summary>A can whose code went already, of another production.</summary>
    public const string CodeWentBefore = "shipment/code-went-before";

    /// <summary>Two consignments to labs whose names are nearly the same.</summary>
    public const string LabsAlike = "shipment/labs-alike";

    /// <summary>A can without a process.</summary>
    public const string NoProcess = "shipment/no-process";

    /// <summary>Two productions write different prices of one lab.</summary>
    public const string PricesDiffer = "shipment/prices-differ";

    /// <summary>A process that the lab does not run.</summary>
    public const string ProcessNotRun = "shipment/process-not-run";

    /// <summary>A production whose check finds errors.</summary>
    public const string ProductionWithErrors = "shipment/production-with-errors";

    /// <summary>Two cans whose codes read alike.</summary>
    public const string ReadsAlike = "shipment/reads-alike";

    /// <summary>Two productions with one code.</summary>
    public const string SameCode = "shipment/same-code";

    /// <summary>Two productions with one title.</summary>
    public const string SameTitle = "shipment/same-title";

    /// <summary>All of them.</summary>
    public static ImmutableArray<string> All { get; } =
    [
        AddressDiffers,
        CannotBeRead,
        CodeWentBefore,
        LabsAlike,
        NoProcess,
        PricesDiffer,
        ProcessNotRun,
        ProductionWithErrors,
        ReadsAlike,
        SameCode,
        SameTitle,
    ];
}
