namespace Spoolbook.Shoot.Accounts;

/// <summary>The lab's services that have rates and words on the papers.</summary>
public static class LabServices
{
    /// <summary>The kind of cost of a service as written; <see cref="CostKind.Service"/> for the lab's own services.</summary>
    public static CostKind KindOf(string service) =>
        service switch
        {
            "prep" => CostKind.Prep,
            "scan" => CostKind.Scan,
            "workprint" => CostKind.Workprint,
            _ => CostKind.Service,
        };
}
