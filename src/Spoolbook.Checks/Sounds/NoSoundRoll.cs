using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Sounds;

static class NoSoundRoll
{
    public static readonly RecordCheck Check = new("sound/no-sound-roll", Level.Note, Look);

    static IEnumerable<Finding> Look(Context context) =>
        from roll in context.Production.Rolls
        where !roll.IsPractice
        let without = context
            .WalkOf(roll)
            .Takes.Where(t => t.Take.RunsInSync && t.Moment.After.SoundRoll is null)
            .Select(t => t.Take)
            .ToHashSet<Take>(ReferenceEqualityComparer.Instance)
        from run in Runs.Of(roll.Takes, take => without.Contains(take) ? "without" : null)
        select Check.At(
            roll,
            run.First,
            run.First.Sync!.Place,
            Sentence.Of(run.IsOne ? "sound/no-sound-roll.message.one" : "sound/no-sound-roll.message.many", ("takes", run.Slates))
        ) with
        {
            Advice = Sentence.Of("sound/no-sound-roll.help"),
        };
}
