using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Loading;

static class ReThreadUnmarked
{
    public static readonly RecordCheck Check = new("load/re-thread-unmarked", Level.Warning, Look);

    static IEnumerable<Finding> Look(Context context) =>
        from roll in context.Production.Rolls
        where !roll.IsPractice
        from reload in roll.Log.OfType<Reload>()
        where reload.ZeroMoved is null
        select Check.At(roll, reload.Place, Sentence.Of("load/re-thread-unmarked.message", ("roll", roll.Name.Value))) with
        {
            Advice = Sentence.Of("load/re-thread-unmarked.help"),
        };
}
