using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Checks.Counters;

static class OverlapWithoutRewind
{
    public static readonly RollCheck Check = new("counter/overlap-without-rewind", Level.Error, Round.Positions, Look);

    static IEnumerable<Finding> Look(Context context, RollBook book)
    {
        if (ContradictionFinder.First(book, ContradictionKind.BehindStand) is not { Entry: { } entry } slip)
        {
            yield break;
        }

        var (at, stood) = (context.Write(slip.At), context.Write(slip.Limit));
        yield return Check.At(
            book.Roll,
            slip.Place,
            entry is Take take
                ? Sentence.Of("counter/overlap-without-rewind.message.take", ("take", take.Slate), ("at", at), ("stood", stood))
                : Sentence.Of("counter/overlap-without-rewind.message.run-on", ("at", at), ("stood", stood))
        ) with
        {
            Take = (entry as Take)?.Slate,
            Others = ContradictionFinder.StoodAt(book, entry) is { } place
                ? [new Related(place, Sentence.Of("counter/overlap-without-rewind.other.the-film-stood-here"))]
                : [],
            Figures =
            [
                new Figure(Sentence.Of("counter/overlap-without-rewind.figure.film-stood-at"), stood),
                new Figure(Sentence.Of("counter/overlap-without-rewind.figure.written"), at),
                new Figure(Sentence.Of("counter/overlap-without-rewind.figure.overlap"), context.Write(slip.Limit - slip.At)),
            ],
            Advice = Sentence.Of("counter/overlap-without-rewind.help", ("at", at)),
        };
    }
}
