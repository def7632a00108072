using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Checks.Speeds;

static class SpringNearlyOut
{
    public static readonly RollCheck Check = new("speed/spring-nearly-out", Level.Note, Round.Strips, Look);

    // Once a winding, at the take that came so far; and not where another on the same winding ran too far.
    static IEnumerable<Finding> Look(Context context, RollBook book)
    {
        var runs = SpringRuns.Of(context, book).ToArray();
        return from at in Enumerable.Range(0, runs.Length)
               let run = runs[at]
               let next = runs.ElementAtOrDefault(at + 1)
               let isLast = run.WoundAt is null || next?.WoundAt is null || next.WoundAt != run.WoundAt
               where isLast && run.Layer.Take is { SingleFrames: null, Interval: null, Timed: null } && IsNear(context, run)
               select Find(context, book, run);
    }

    static bool IsNear(Context context, SpringRuns.Run run) =>
        Math.Abs((run.Driven - run.FullWind.Value).Frames) < context.Of(Tolerances.SpringReserve).Frames && run.Driven <= run.FullWind.Value + context.Of(Tolerances.SpringSlack);

    static Finding Find(Context context, RollBook book, SpringRuns.Run run)
    {
        var (take, driven, wind) = (run.Layer.Take, context.Write(run.Driven), context.Write(run.FullWind.Value));
        return Check.At(book.Roll, take, take.To.Place, $"Take {take.Slate} ended with the spring all but run down: its last frames may have run slow, and be overexposed") with
        {
            Others = [new Related(run.WoundAt ?? run.FullWind.Place, run.WoundAt is null ? "a full wind" : "last wound here")],
            Figures = [new Figure("driven", driven), new Figure("full wind", wind)],
            Help = "Do not count on the last second of it. Wind before every take, and stop the camera before the spring does.",
        };
    }
}
