using System.Collections.Immutable;
using Spoolbook.Checks.Ruling;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Accepting;

/// <summary>Rules broken intentionally: a waiver turns its findings off, and is checked itself.</summary>
public static class Waivers
{
    /// <summary>
    /// The findings left, at the levels that the production sets, and those that a waiver turned off. The last step,
    /// over the findings of all stages together.
    /// </summary>
    /// <param name="findings">Everything found in reading and in all rounds; returned in order of place.</param>
    /// <param name="printed">What printing found, appended in its own order; null where nothing was printed.</param>
    public static (ImmutableArray<Finding> Left, ImmutableArray<Waived> Waived) Apply(
        IEnumerable<Finding> findings,
        Production production,
        ImmutableArray<Finding>? printed = null
    )
    {
        var all = findings.ToImmutableArray();
        ImmutableArray<Waived> waived = [.. Waived(all, production), .. Waived(printed ?? [], production)];
        var used = waived.Select(w => w.Waiver).ToHashSet<Waiver>(ReferenceEqualityComparer.Instance);
        var off = waived.Select(w => w.Finding).ToHashSet<Finding>(ReferenceEqualityComparer.Instance);
        var held = new SuppressedScope(production, all);

        // An error in printing may have kept other findings from coming up.
        var printing = printed is { } found && !found.Any(f => f.Level == Level.Error);
        var ofWaivers = WaiverChecks.Of(production, used, held, printing);
        var left = HouseLevels.Given(all.Where(f => !off.Contains(f)).Concat(ofWaivers), production);
        var leftPrinted = HouseLevels.Given((printed ?? []).Where(f => !off.Contains(f)), production);
        return ([.. FindingOrder.Sort(left), .. leftPrinted], waived);
    }

    /// <summary>Those of some findings in a production that it neither accepts nor turns off, at the levels that it sets.</summary>
    public static IEnumerable<Finding> Standing(IEnumerable<Finding> findings, Production production) =>
        HouseLevels.Given(findings.Where(f => For(f, production) is null), production);

    static IEnumerable<Waived> Waived(ImmutableArray<Finding> findings, Production production) =>
        from finding in findings
        let waiver = For(finding, production)
        where waiver is not null
        select new Waived(finding, waiver);

    /// <summary>The waiver that turns a finding off: the roll's own first, then the production's; null where there is none.</summary>
    internal static Waiver? For(Finding finding, Production production)
    {
        if (HouseLevels.IsFixed(finding))
        {
            return null;
        }

        var ofRolls = from roll in production.Rolls where roll.Name.Value == finding.Roll from waiver in roll.Accept select waiver;
        return ofRolls.Concat(production.Accept).FirstOrDefault(w => Covers(w, finding, production));
    }

    static bool Covers(Waiver waiver, Finding finding, Production production) =>
        waiver.Reason is not null
        && waiver.Check.Value == finding.Check
        && Names(waiver.Take, finding.Take)
        && Names(waiver.Shot, finding.Shot ?? finding.Take?.Split('/')[0])
        && Names(waiver.Roll, finding.Roll)
        && Names(waiver.Lot, finding.Lot ?? LotOf(finding, production))
        && Names(waiver.Piece, finding.Piece);

    // A waiver that names no place covers every place.
    static bool Names(Located<string>? written, string? place) => written is null || written.Value == place;

    static string? LotOf(Finding finding, Production production) =>
        finding.Roll is { } name && production.RollNamed(name) is { } roll ? production.LotOf(roll)?.Name.Value : null;
}
