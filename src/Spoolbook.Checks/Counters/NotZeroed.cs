using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Checks.Counters;

static class NotZeroed
{
    public static readonly RollCheck Check = new("counter/not-zeroed", Level.Note, Round.Strips, Look);

    static IEnumerable<Finding> Look(Context context, RollBook book) =>
        from rewind in FrameCounter.NotZeroed(book.Strip)
        let said = rewind.CounterZeroed is not null
        select Check.At(
            book.Roll,
            (rewind.CounterZeroed?.Place ?? rewind.Place),
            said ? Sentence.Of("counter/not-zeroed.message.not-set") : Sentence.Of("counter/not-zeroed.message.not-said")
        ) with
        {
            Level = said ? Level.Warning : Level.Note,
            Advice = Sentence.Of("counter/not-zeroed.help"),
        };
}
