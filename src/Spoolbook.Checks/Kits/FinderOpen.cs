using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Kits;

static class FinderOpen
{
    public static readonly RecordCheck Check = new("kit/finder-open", Level.Warning, Look);

    static IEnumerable<Finding> Look(Context context) =>
        from roll in context.Production.Rolls
        where !roll.IsPractice
        let reflex = context.TakesWithBodies(roll).Where(shot => IsReflex(shot.Body)).Select(shot => shot.Take).ToHashSet<Take>(ReferenceEqualityComparer.Instance)
        from run in Runs.Of(roll.Takes, take => take.FinderClosed is { Value: false } && reflex.Contains(take) ? "open" : null)
        select Check.At(roll, run.First, run.First.FinderClosed!.Place, $"The finder stood open at {(run.Takes.Length == 1 ? "take" : "takes")} {run.Slates} with no eye at it: light came in through it to the film") with
        {
            Help = "Close the finder, or cover it with tape, whenever no eye is at it: on a cable, a timer or a motor most of all. Have these takes looked at for a veil of light; in doubt, shoot them again.",
        };

    // A finder that takes none of the lens's light has no way to the film either.
    static bool IsReflex(Body? body) => body?.FinderLoss is not { Value.Sign: 0 };
}
