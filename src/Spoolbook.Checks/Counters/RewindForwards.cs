using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Checks.Counters;

static class RewindForwards
{
    public static readonly RollCheck Check = new("counter/rewind-forwards", Level.Error, Round.Positions, Look);

    static IEnumerable<Finding> Look(Context context, RollBook book)
    {
        if (ContradictionFinder.First(book, ContradictionKind.WoundForward) is not { Entry: { } entry } slip)
        {
            yield break;
        }

        var (to, stood) = (context.Write(slip.At), context.Write(slip.Limit));
        yield return Check.At(book.Roll, slip.Place, Sentence.Of("counter/rewind-forwards.message", ("to", to), ("stood", stood))) with
        {
            Others = ContradictionFinder.StoodAt(book, entry) is { } place
                ? [new Related(place, Sentence.Of("counter/rewind-forwards.other.the-film-stood-here"))]
                : [],
            Figures =
            [
                new Figure(Sentence.Of("counter/rewind-forwards.figure.film-stood-at"), stood),
                new Figure(Sentence.Of("counter/rewind-forwards.figure.wound-back-to"), to),
            ],
            Advice = Sentence.Of("counter/rewind-forwards.help"),
        };
    }
}
