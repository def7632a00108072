using Spoolbook.Checks.Counters;
using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Coverage;

static class ShotNotListed
{
    public static readonly RecordCheck Check = new("cover/shot-not-listed", Level.Warning, Look);

    // A misslated take in the middle of another shot has its own finding.
    static IEnumerable<Finding> Look(Context context) =>
        from shot in Shots.Wanted(context)
        where context.Production.Shots.Length > 0 && context.Production.ShotNamed(shot.Key) is null
        let first = shot.First()
        where !Slates.Of(context.Production).Any(s => s.IsMisfit && ReferenceEquals(s.Take, first.Take))
        select Check.At(
            first.Roll,
            first.Take,
            first.Take.Scene.Place,
            Sentence.Of("cover/shot-not-listed.message", ("key", shot.Key))
        ) with
        {
            Advice = Sentence.Of("cover/shot-not-listed.help"),
        };
}
