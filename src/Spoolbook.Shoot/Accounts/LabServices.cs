namespace Spoolbook.Shoot.Accounts;

/// <summary>The lab's services that a rate can be written for, and that the papers have a word for.</summary>
public static class LabServices
{
    /// <summary>What a service as it is written is counted under; <see cref="CostKind.Service"/> for one that is the lab's own.</summary>
    public static CostKind KindOf(string service) =>
        service switch
        {
            "prep" => CostKind.Prep,
            "scan" => CostKind.Scan,
            "workprint" => CostKind.Workprint,
            _ => CostKind.Service,
        };
}
