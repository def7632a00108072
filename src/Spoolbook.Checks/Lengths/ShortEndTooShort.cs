using Spoolbook.Checks.Running;
using Spoolbook.Film;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Checks.Lengths;

static class ShortEndTooShort
{
    public static readonly RollCheck Check = new("length/short-end-too-short", Level.Note, Round.Strips, Look);

    // One that was loaded again was long enough for somebody; and a foot that nobody spoke of is no short end.
    static IEnumerable<Finding> Look(Context context, RollBook book)
    {
        var (roll, left, least) = (book.Roll, book.Tally.ShortEnd, context.Of(Tolerances.ShortEndLeast));
        if (roll.IsPractice || roll.Unload is not { } unload || left >= least || context.Production.Rolls.Any(r => r.ShortEndOf?.Value == roll.Name.Value))
        {
            yield break;
        }

        if (left <= (unload.ShortEnd is null ? context.Of(Tolerances.GapSlack) : Footage.Zero))
        {
            yield break;
        }

        yield return Check.At(roll, unload.ShortEnd?.Place ?? unload.Place, $"Only {context.Write(left)} are left on roll {roll.Name.Value}, too little to load again, and they count as film in hand") with
        {
            Figures = [new Figure("short end", context.Write(left)), new Figure("worth a can from", context.Write(least))],
            Help = "Write `short-end: thrown`, so that nobody plans a scene on it. If it is kept for scratch tests or for practising the load, accept it and say so.",
        };
    }
}
