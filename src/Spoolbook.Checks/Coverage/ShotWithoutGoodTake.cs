using Spoolbook.Checks.Counters;
using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Coverage;

static class ShotWithoutGoodTake
{
    public static readonly RecordCheck Check = new("cover/shot-without-good-take", Level.Warning, Look, NeedsAll: true);

    // The good take may be there under a mistaken slate, which has its own finding.
    static IEnumerable<Finding> Look(Context context)
    {
        var strangers = Slates.Strangers(context.Production, Slates.Of(context.Production));
        var shot = Shots.All(context).Where(t => !t.Take.IsTest).ToLookup(t => t.Take.ShotName, StringComparer.Ordinal);
        return from planned in context.Production.Shots
               let takes = shot[planned.Name].ToArray()
               where
                   takes.Length > 0
                   && !takes.Any(t => t.Take.Mark.Value is Mark.Good or Mark.Hold)
                   && !strangers.Contains((takes[^1].Roll.Name.Value, takes[^1].Take.Number.Value + 1))
               select Find(planned, takes);
    }

    static Finding Find(PlannedShot planned, (Roll Roll, Take Take)[] takes) =>
        Check.At(
            planned.Place,
            Sentence.Of(
                takes.Length == 1 ? "cover/shot-without-good-take.message.once" : "cover/shot-without-good-take.message.times",
                ("shot", planned.Name),
                ("times", takes.Length)
            )
        ) with
        {
            Shot = planned.Name,
            Others = [new Related(takes[^1].Take.Number.Place, Sentence.Of("cover/shot-without-good-take.other.the-last-take"))],
            Advice = Sentence.Of("cover/shot-without-good-take.help"),
        };
}
