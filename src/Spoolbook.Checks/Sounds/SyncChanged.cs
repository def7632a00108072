using System.Collections.Immutable;
using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Sounds;

static class SyncChanged
{
    public static readonly RecordCheck Check = new("sound/sync-changed", Level.Note, Look);

    static IEnumerable<Finding> Look(Context context) =>
        from roll in context.Production.Rolls
        where !roll.IsPractice
        from shot in roll
            .Takes.Where(t => t is { IsTest: false, Mute: null, Sync: not null })
            .GroupBy(t => (t.ShotName, Motor: t.Motor?.Value))
        let takes = shot.ToImmutableArray()
        let others = takes.Where(t => t.Sync!.Value == IsUsual(takes)).ToImmutableArray()
        where others.Length < takes.Length
        from take in takes.Except(others)
        where !(take.Sync!.Value ? others : [take]).Any(t => t.Note is not null)
        select Check.At(
            roll,
            take,
            take.Sync!.Place,
            Sentence.Of(
                take.Sync!.Value ? "sound/sync-changed.message.in" : "sound/sync-changed.message.out",
                ("take", take.Slate),
                ("other", others[0].Slate)
            )
        ) with
        {
            Others = [new Related(others[0].Sync!.Place, Sentence.Of("sound/sync-changed.other", ("take", others[0].Slate)))],
            Advice = Sentence.Of("sound/sync-changed.help"),
        };

    // What most takes of the shot are; of as many each, what the first is.
    static bool IsUsual(ImmutableArray<Take> takes)
    {
        var inSync = takes.Count(t => t.Sync!.Value);
        return (2 * inSync) == takes.Length ? takes[0].Sync!.Value : (2 * inSync) > takes.Length;
    }
}
