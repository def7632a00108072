using Spoolbook.Checks.Running;
using Spoolbook.Checks.Speeds;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Loading;

static class SpeedNotReset
{
    public static readonly RecordCheck Check = new("load/speed-not-reset", Level.Warning, Look);

    // While there is time: once a take was shot so, that is told instead, and of a roll that is out nothing can be set.
    static IEnumerable<Finding> Look(Context context) =>
        from roll in context.Production.Rolls
        let left = LoadingSpeeds.LeftAt(context, roll)
        where left is not null && roll.Unload is null && roll.Takes.All(t => t.Mark.Value == Mark.Test && t.SpeedWritten is null)
        select Check.At(roll, roll.Load.SpeedAfter!.Place, $"Roll {roll.Name.Value} is loaded, and its camera still stands at {left.Value} frames a second, the loading speed") with
        {
            Others = [new(left.Place, "the speed that it is loaded at")],
            Figures = [new("projected at", context.Production.ProjectedAt.ToString())],
            Help = $"Set the speed before the first take, and write `speed-after: {context.Production.ProjectedAt}`; if the first take is meant to be slow, write `speed: {left.Value}` on it.",
        };
}
