using System.Collections.Immutable;
using Spoolbook.Checks.Accepting;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Running;

/// <summary>Rules broken on purpose: a waiver turns its findings off, and is itself checked.</summary>
public static class Waivers
{
    /// <summary>The findings that stand, at the levels that the production sets, and those that a waiver turned off.</summary>
    /// <param name="findings">Everything found, in all rounds.</param>
    public static (ImmutableArray<Finding> Left, ImmutableArray<Waived> Waived) Apply(IEnumerable<Finding> findings, Production production)
    {
        var all = findings.ToImmutableArray();
        var waived = (from finding in all
                      let waiver = For(finding, production)
                      where waiver is not null
                      select new Waived(finding, waiver)).ToImmutableArray();
        var used = waived.Select(w => w.Waiver).ToHashSet<Waiver>(ReferenceEqualityComparer.Instance);
        var left = all.Except(waived.Select(w => w.Finding), ReferenceEqualityComparer.Instance).Cast<Finding>();
        var held = new HeldBack(production, all);
        return (CheckRunner.InOrder(HouseLevels.Given(left.Concat(WaiverChecks.Of(production, used, held)), production)), waived);
    }

    /// <summary>The waiver that turns a finding off: the roll's own first, then the production's; null where there is none.</summary>
    internal static Waiver? For(Finding finding, Production production)
    {
        if (HouseLevels.IsFixed(finding.Check))
        {
            return null;
        }

        var ofRolls = from roll in production.Rolls
                      where roll.Name.Value == finding.Roll
                      from waiver in roll.Accept
                      select waiver;
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

    // A place that is not written leaves it open.
    static bool Names(Located<string>? written, string? place) => written is null || written.Value == place;

    static string? LotOf(Finding finding, Production production) =>
        finding.Roll is { } name && production.RollNamed(name) is { } roll ? production.LotOf(roll)?.Name.Value : null;
}
