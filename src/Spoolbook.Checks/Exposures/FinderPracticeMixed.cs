using Spoolbook.Checks.Running;
using Spoolbook.Film;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Exposures;

static class FinderPracticeMixed
{
    public static readonly RecordCheck Check = new("exposure/finder-practice-mixed", Level.Warning, Look, NeedsAll: true);

    /// <summary>A take whose meter's time tells which practice it was metered by.</summary>
    sealed record Metered(Roll Roll, Take Take, FinderPractice Practice, ExposureTime Marked, ExposureTime Adapted);

    // Once for a roll and a body: whoever set the meter set it once.
    static IEnumerable<Finding> Look(Context context) =>
        from body in context.Production.Bodies
        let metered = Of(context, body).ToArray()
        let usual = metered.FirstOrDefault(m => m.Practice == context.Production.MeterFor)
        where usual is not null
        from odd in metered.Where(m => m.Practice != context.Production.MeterFor).GroupBy(m => m.Roll)
        select Find(context, body, [.. odd], usual);

    static Finding Find(Context context, Body body, Metered[] odd, Metered usual)
    {
        var first = odd[0];
        // At one speed, what already stands on the meter; the time reckoned for it may be a hair off that.
        var should = first.Take.Speed == usual.Take.Speed ? usual.Take.MeteredAt!.Value
            : context.Production.MeterFor == FinderPractice.Adapted ? first.Adapted : first.Marked;
        var off = first.Marked.StopsOver(first.Adapted);
        var result = context.Production.MeterFor == FinderPractice.Adapted ? "under" : "over";
        var takes = odd.Length == 1 ? $"Take {first.Take.Slate} was" : $"{Context.Count(odd.Length, "take")} from {first.Take.Slate} on were";
        return Check.At(first.Roll, first.Take, first.Take.MeteredAt!.Place, $"{takes} metered for {first.Take.MeteredAt.Value}, {Said(first.Practice)}, and take {usual.Take.Slate} with the same body for {usual.Take.MeteredAt!.Value}, {Said(usual.Practice)}: they will be {Context.Stops(Math.Round(off, 2))} apart") with
        {
            Others = [new(usual.Take.MeteredAt.Place, $"take {usual.Take.Slate}"), new(body.FinderLoss!.Place, "what the finder takes")],
            Figures =
            [
                new("time as marked", first.Marked.ToString()),
                new("less the finder's part", first.Adapted.ToString()),
                new("between the two", Context.Stops(Math.Round(off, 2))),
                new("the production meters for", context.Production.MeterFor == FinderPractice.Adapted ? "the time less the finder's part" : "the time as marked"),
            ],
            Help = $"Keep to one way for the whole production: set the meter to {should} at {Context.Speed(first.Take.Speed)}. This one is {Context.Stops(Math.Round(off, 2))} {result}: negative forgives it, and whoever grades it should know.",
        };
    }

    static IEnumerable<Metered> Of(Context context, Body body)
    {
        if (body is not { FinderLoss: { Value.Sign: > 0 } loss, ShutterAngle: { } angle } || loss.Value >= 1 || angle.Value > 360)
        {
            return [];
        }

        return from roll in context.Production.Rolls
               where !roll.IsPractice
               from shot in context.TakesWithBodies(roll)
               where shot.Body == body && shot.Take is { MeteredAt: not null, Timed: null, SingleFrames: null }
               let set = shot.Take.MeteredAt!.Value
               let marked = ExposureTime.Of(new Shutter(angle.Value), shot.Take.Speed)
               let adapted = marked.Adapted(loss.Value)
               let practice = PracticeOf(context, set, marked, adapted)
               where practice is not null
               select new Metered(roll, shot.Take, practice.Value, marked, adapted);
    }

    // The nearer of the two times; null for one that is near neither, and was set for something else.
    static FinderPractice? PracticeOf(Context context, ExposureTime set, ExposureTime marked, ExposureTime adapted)
    {
        var (toMarked, toAdapted) = (Math.Abs(set.StopsOver(marked)), Math.Abs(set.StopsOver(adapted)));
        return Math.Min(toMarked, toAdapted) > context.Of(Tolerances.MeterTime) ? null
            : toAdapted < toMarked ? FinderPractice.Adapted
            : FinderPractice.Marked;
    }

    static string Said(FinderPractice practice) => practice == FinderPractice.Adapted ? "the time less what the finder takes" : "the time marked on the camera";
}
