using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Exposures;

static class StopChanged
{
    public static readonly RecordCheck Check = new("exposure/stop-changed", Level.Note, Look);

    // Less than a third is the breadth of the mark.
    const double LeastStops = 0.3;

    static IEnumerable<Finding> Look(Context context)
    {
        var wrong = Over.Check.Look(context).Concat(Under.Check.Look(context)).Select(f => f.Place).ToHashSet();
        return from next in context.TakesOfOneShot()
               where IsSameSetUp(next.Before, next.Take) && !wrong.Contains(next.Before.Stop!.Place)
               where Math.Abs(next.Before.Stop!.Value.Av - next.Take.Stop!.Value.Av) > LeastStops
               select Find(next.Roll, next.Before, next.Take);
    }

    static Finding Find(Roll roll, Take before, Take take) =>
        Check.At(
            roll,
            take,
            take.Stop!.Place,
            Sentence.Of(
                "exposure/stop-changed.message",
                ("take", take.Slate),
                ("stop", take.Stop.Value.ToString()),
                ("before", before.Slate),
                ("before-stop", before.Stop!.Value.ToString())
            )
        ) with
        {
            Others = [new Related(before.Stop.Place, Sentence.Of("exposure/stop-changed.other", ("take", before.Slate)))],
            Advice = Sentence.Of("exposure/stop-changed.help"),
        };

    // Everything that a stop goes by is as it was, and the meter was not held again.
    static bool IsSameSetUp(Take before, Take take) =>
        before is { Stop: not null, Exposed: null, Timed: null }
        && take is { Stop: not null, Reading: null, Exposed: null, Timed: null }
        && take.Lens?.Value == before.Lens?.Value
        && take.Shutter?.Value == before.Shutter?.Value
        && take.Light?.Value == before.Light?.Value
        && take.Speed == before.Speed
        && take.Filters.Select(f => f.Value).SequenceEqual(before.Filters.Select(f => f.Value));
}
