using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Speeds;

static class LeftAtLoadingSpeed
{
    public static readonly RecordCheck Check = new("speed/left-at-loading-speed", Level.Warning, Look);

    static IEnumerable<Finding> Look(Context context) =>
        from roll in context.Production.Rolls
        let left = LoadingSpeeds.LeftAt(context, roll)
        where left is not null
        let first = roll.Takes.FirstOrDefault(t => t.Mark.Value != Mark.Test)
        where first is not null && roll.Takes.TakeWhile(t => !ReferenceEquals(t, first)).Append(first).All(t => t.SpeedWritten is null)
        let after = roll.Load.SpeedAfter!
        select Check.At(roll, first, after.Place, $"The camera was left at {after.Value} frames a second after loading, and take {first.Slate} does not say that it was set back") with
        {
            Others = [new(left.Place, "the speed that it is loaded at")],
            Figures = [new("loading speed", left.Value.ToString()), new("projected at", context.Production.ProjectedAt.ToString())],
            Help = $"If it was set back, write `speed-after: {context.Production.ProjectedAt}`. If not, what was shot so will hurry on the screen: shoot it again, or, where it is meant, write the speed on the take, `speed: {after.Value}`.",
        };
}
