using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Sounds;

static class MuteAndSync
{
    public static readonly RecordCheck Check = new("sound/mute-and-sync", Level.Warning, Look);

    static IEnumerable<Finding> Look(Context context) =>
        from roll in context.Production.Rolls
        from take in roll.Takes
        where take.Mute?.Value == true && (take.SoundRoll is not null || take.Sync?.Value == true)
        select Check.At(
            roll,
            take,
            take.Mute!.Place,
            take.SoundRoll is { } sound
                ? Sentence.Of("sound/mute-and-sync.message.roll", ("take", take.Slate), ("sound", sound.Value))
                : Sentence.Of("sound/mute-and-sync.message.sync", ("take", take.Slate))
        ) with
        {
            Others = [new(take.SoundRoll?.Place ?? take.Sync!.Place, Sentence.Of("sound/mute-and-sync.other.the-sound"))],
            Advice = Sentence.Of("sound/mute-and-sync.help"),
        };
}
