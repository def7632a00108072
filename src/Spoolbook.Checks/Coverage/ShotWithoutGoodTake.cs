using Spoolbook.Checks.Counters;
using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Coverage;

static class ShotWithoutGoodTake
{
    public static readonly RecordCheck Check = new("cover/shot-without-good-take", Level.Warning, Look, NeedsAll: true);

    // The good take may be there under a slip of the pen: that is told then.
    static IEnumerable<Finding> Look(Context context)
    {
        var strangers = Slates.Strangers(context.Production, Slates.Of(context.Production));
        return from planned in context.Production.Shots
               let takes = Shots.All(context).Where(t => t.Take.ShotName == planned.Name).ToArray()
               where takes.Length > 0 && !takes.Any(t => t.Take.Mark.Value is Mark.Good or Mark.Hold) && !strangers.Contains((takes[^1].Roll.Name.Value, takes[^1].Take.Number.Value + 1))
               select Find(planned, takes);
    }

    static Finding Find(PlannedShot planned, (Roll Roll, Take Take)[] takes) =>
        Check.At(planned.Place, $"Shot {planned.Name} was taken {Times(takes.Length)}, and no take of it is good") with
        {
            Shot = planned.Name,
            Others = [new Related(takes[^1].Take.Number.Place, "the last take")],
            Help = "Shoot it again while the set stands, or mark the take that will have to do as `hold`.",
        };

    static string Times(int takes) => takes == 1 ? "once" : Context.Count(takes, "time");
}
