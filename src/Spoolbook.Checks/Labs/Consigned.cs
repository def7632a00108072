using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Labs;

/// <summary>Where the list of consignments names a roll.</summary>
static class Consigned
{
    /// <summary>Each mention of a roll, in the order of billing: by the day of sending, then as written.</summary>
    public static IEnumerable<(Consignment Consignment, Located<string> Naming)> To(Production production, Roll roll) =>
        from consignment in production.Lab?.Consignments ?? []
        from naming in consignment.Rolls
        where naming.Value == roll.Name.Value
        orderby consignment.SentOn?.Value ?? DateOnly.MaxValue
        select (consignment, naming);
}
