using Spoolbook.Checks.Running;
using Spoolbook.Checks.Speeds;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Loading;

static class SpeedNotReset
{
    public static readonly RecordCheck Check = new("load/speed-not-reset", Level.Warning, Look);

    // Only while there is time to reset it: a take shot so has its own finding, and a roll that is out cannot be helped.
    static IEnumerable<Finding> Look(Context context) =>
        from roll in context.Production.Rolls
        let left = LoadingSpeeds.LeftAt(context, roll)
        where left is not null && roll.Unload is null && roll.Takes.All(t => t.Mark.Value == Mark.Test && t.SpeedWritten is null)
        select Check.At(
            roll,
            roll.Load.SpeedAfter!.Place,
            Sentence.Of("load/speed-not-reset.message", ("roll", roll.Name.Value), ("left", left.Value.ToString()))
        ) with
        {
            Others = [new(left.Place, Sentence.Of("load/speed-not-reset.other.the-speed-that-it-is-loaded"))],
            Figures = [new(Sentence.Of("load/speed-not-reset.figure.projected-at"), context.Production.ProjectedAt.ToString())],
            Advice = Sentence.Of(
                "load/speed-not-reset.help",
                ("projected-at", context.Production.ProjectedAt.ToString()),
                ("left", left.Value.ToString())
            ),
        };
}
