using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Labs;

static class NothingShot
{
    public static readonly RecordCheck Check = new("lab/nothing-shot", Level.Note, Look, NeedsAll: true);

    static IEnumerable<Finding> Look(Context context) =>
        from roll in context.Production.Rolls
        where roll.IsUnshot && roll.Lab?.Send is null
        select InABox(context, roll)
            ?? Check.At(roll, roll.Unload!.Place, Sentence.Of("lab/nothing-shot.message", ("roll", roll.Name.Value))) with
            {
                Advice = Sentence.Of("lab/nothing-shot.help"),
            };

    static Finding? InABox(Context context, Roll roll)
    {
        var named = Consigned.To(context.Production, roll).Select(c => c.Naming).FirstOrDefault();
        return (named?.Place ?? roll.Lab?.SentOn?.Place) is not { } place
            ? null
            : Check.At(roll, place, Sentence.Of("lab/nothing-shot.message.in-a-box", ("roll", roll.Name.Value))) with
            {
                Level = Level.Warning,
                Advice = Sentence.Of("lab/nothing-shot.help.in-a-box"),
            };
    }
}
