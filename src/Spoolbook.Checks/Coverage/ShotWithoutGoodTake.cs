using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Coverage;

static class ShotWithoutGoodTake
{
    public static readonly RecordCheck Check = new("cover/shot-without-good-take", Level.Warning, Look, NeedsAll: true);

    static IEnumerable<Finding> Look(Context context) =>
        from planned in context.Production.Shots
        let takes = Shots.All(context).Where(t => t.Take.ShotName == planned.Name).ToArray()
        where takes.Length > 0 && !takes.Any(t => t.Take.Mark.Value is Mark.Good or Mark.Hold)
        select Check.At(planned.Place, $"Shot {planned.Name} was taken {Times(takes.Length)}, and no take of it is good") with
        {
            Shot = planned.Name,
            Others = [new Related(takes[^1].Take.Number.Place, "the last take")],
            Help = "Shoot it again while the set stands, or mark the take that will have to do as `hold`.",
        };

    static string Times(int takes) => takes == 1 ? "once" : Context.Count(takes, "time");
}
