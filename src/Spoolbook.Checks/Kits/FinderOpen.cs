using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Kits;

static class FinderOpen
{
    public static readonly RecordCheck Check = new("kit/finder-open", Level.Warning, Look);

    static IEnumerable<Finding> Look(Context context) =>
        from roll in context.Production.Rolls
        where !roll.IsPractice
        let reflex = context
            .TakesWithBodies(roll)
            .Where(shot => IsReflex(shot.Body))
            .Select(shot => shot.Take)
            .ToHashSet<Take>(ReferenceEqualityComparer.Instance)
        from run in Runs.Of(roll.Takes, take => take.FinderClosed is { Value: false } && reflex.Contains(take) ? "open" : null)
        select Check.At(
            roll,
            run.First,
            run.First.FinderClosed!.Place,
            Sentence.Of(run.IsOne ? "kit/finder-open.message.one" : "kit/finder-open.message.many", ("takes", run.Slates))
        ) with
        {
            Advice = Sentence.Of("kit/finder-open.help"),
        };

    // A finder that takes no light from the lens cannot leak light to the film.
    static bool IsReflex(Body? body) => body?.FinderLoss is not { Value.Sign: 0 };
}
