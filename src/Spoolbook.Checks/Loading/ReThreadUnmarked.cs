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
        select Check.At(roll, reload.Place, $"Roll {roll.Name.Value} was threaded again, and nothing says where its counting starts") with
        {
            Help = "Punch the frame in the gate before a roll is taken out. Write how far the new zero lies down the film, `zero-moved: 1+08`, or `zero-moved: 0+00` where the punched frame was found again.",
        };
}
