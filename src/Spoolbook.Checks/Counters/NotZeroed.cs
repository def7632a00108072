using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Checks.Counters;

static class NotZeroed
{
    public static readonly RollCheck Check = new("counter/not-zeroed", Level.Note, Round.Strips, Look);

    static IEnumerable<Finding> Look(Context context, RollBook book) =>
        from rewind in FrameCounter.NotZeroed(book.Strip)
        let said = rewind.CounterZeroed is not null
        select Check.At(book.Roll, (rewind.CounterZeroed?.Place ?? rewind.Place), said
            ? "The frame counter was not set to zero before the pass that is wound back, so nobody can find its first frame again"
            : "Nothing says whether the frame counter was set to zero before the pass that is wound back") with
        {
            Level = said ? Level.Warning : Level.Note,
            Help = "Set the counter to zero before a pass that will be wound back, note its count, wind back to zero, and write `counter-zeroed: yes`.",
        };
}
