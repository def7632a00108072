using Spoolbook.Checks.Running;
using Spoolbook.Film;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Lengths;

static class ShortEndTooShort
{
    public static readonly RollCheck Check = new("length/short-end-too-short", Level.Note, Round.Strips, Look);

    // A short end that was loaded again was long enough.
    static IEnumerable<Finding> Look(Context context, RollBook book)
    {
        var (roll, left, least) = (book.Roll, book.Tally.ShortEnd, context.Of(Tolerances.ShortEndLeast));
        if (
            roll.IsPractice
            || roll.Unload is not { } unload
            || left == Footage.Zero
            || left >= least
            || context.Production.Rolls.Any(r => r.ShortEndOf?.Value == roll.Name.Value)
        )
        {
            yield break;
        }

        yield return Check.At(
            roll,
            unload.ShortEnd?.Place ?? unload.Place,
            Sentence.Of("length/short-end-too-short.message", ("left", context.Write(left)), ("roll", roll.Name.Value))
        ) with
        {
            Figures =
            [
                new Figure(Sentence.Of("length/short-end-too-short.figure.short-end"), context.Write(left)),
                new Figure(Sentence.Of("length/short-end-too-short.figure.worth-a-can-from"), context.Write(least)),
            ],
            Advice = Sentence.Of("length/short-end-too-short.help"),
        };
    }
}
