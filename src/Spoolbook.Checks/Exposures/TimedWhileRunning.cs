using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Exposures;

static class TimedWhileRunning
{
    public static readonly RecordCheck Check = new("exposure/timed-while-running", Level.Warning, Look);

    static IEnumerable<Finding> Look(Context context) =>
        from roll in context.Production.Rolls
        from take in roll.Takes
        where take is { Timed: not null, Interval: null, SingleFrames: null }
        select Check.At(roll, take, take.Timed!.Place, Sentence.Of("exposure/timed-while-running.message", ("take", take.Slate))) with
        {
            Advice = Sentence.Of("exposure/timed-while-running.help"),
        };
}
