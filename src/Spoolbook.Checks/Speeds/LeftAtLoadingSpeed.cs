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
        select Check.At(
            roll,
            first,
            after.Place,
            Sentence.Of("speed/left-at-loading-speed.message", ("after", after.Value.ToString()), ("first", first.Slate))
        ) with
        {
            Others = [new(left.Place, Sentence.Of("speed/left-at-loading-speed.other.the-speed-that-it-is-loaded"))],
            Figures =
            [
                new(Sentence.Of("speed/left-at-loading-speed.figure.loading-speed"), left.Value.ToString()),
                new(Sentence.Of("speed/left-at-loading-speed.figure.projected-at"), context.Production.ProjectedAt.ToString()),
            ],
            Advice = Sentence.Of(
                "speed/left-at-loading-speed.help",
                ("projected-at", context.Production.ProjectedAt.ToString()),
                ("after", after.Value.ToString())
            ),
        };
}
