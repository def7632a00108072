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
        return Changed(context).Where(c => !wrong.Contains(c.Before.Stop!.Place)).Select(c => Find(c.Roll, c.Before, c.Take));
    }

    static IEnumerable<(Roll Roll, Take Before, Take Take)> Changed(Context context) =>
        from roll in context.Production.Rolls
        where !roll.IsPractice
        from pair in roll.Takes.Zip(roll.Takes.Skip(1))
        let before = pair.First
        let take = pair.Second
        where IsSameSetUp(before, take) && Math.Abs(before.Stop!.Value.Av - take.Stop!.Value.Av) > LeastStops
        select (roll, before, take);

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
        before is { IsTest: false, Stop: not null }
        && take is { IsTest: false, Stop: not null, Reading: null, Exposed: null, Timed: null }
        && before is { Exposed: null, Timed: null }
        && take.ShotName == before.ShotName
        && take.Lens?.Value == before.Lens?.Value
        && take.Shutter?.Value == before.Shutter?.Value
        && take.Light?.Value == before.Light?.Value
        && take.Speed == before.Speed
        && take.Filters.Select(f => f.Value).SequenceEqual(before.Filters.Select(f => f.Value));
}
