using System.Collections.Immutable;
using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Checks.Counters;

static class RewindForwards
{
    public static readonly RollCheck Check = new("counter/rewind-forwards", Level.Error, Round.Positions, Look);

    static IEnumerable<Finding> Look(Context context, RollBook book) =>
        Forwards(context, book) is { } forwards ? [forwards] : Nowhere(context, book);

    static Finding? Forwards(Context context, RollBook book)
    {
        if (ContradictionFinder.First(book, ContradictionKind.WoundForward) is not { Entry: { } entry } slip)
        {
            return null;
        }

        var (to, stood) = (context.Write(slip.At), context.Write(slip.Limit));
        return Check.At(book.Roll, slip.Place, Sentence.Of("counter/rewind-forwards.message", ("to", to), ("stood", stood))) with
        {
            Others = StoodAt(book, entry),
            Figures =
            [
                new Figure(Sentence.Of("counter/rewind-forwards.figure.film-stood-at"), stood),
                new Figure(Sentence.Of("counter/rewind-forwards.figure.wound-back-to"), to),
            ],
            Advice = Sentence.Of("counter/rewind-forwards.help"),
        };
    }

    // No film moved, so every position may be right: the next take only lies behind this one, and not on it.
    static IEnumerable<Finding> Nowhere(Context context, RollBook book) =>
        from moment in book.Walk.Moments
        let rewind = moment.Entry as Rewind
        where rewind is not null && moment.To == moment.From
        select Check.At(
            book.Roll,
            rewind.To.Place,
            Sentence.Of("counter/rewind-forwards.message.nowhere", ("to", context.Write(moment.To)))
        ) with
        {
            Level = Level.Warning,
            Others = StoodAt(book, rewind),
            Advice = Sentence.Of("counter/rewind-forwards.help.nowhere"),
        };

    static ImmutableArray<Related> StoodAt(RollBook book, LogEntry entry) =>
        ContradictionFinder.StoodAt(book, entry) is { } place
            ? [new Related(place, Sentence.Of("counter/rewind-forwards.other.the-film-stood-here"))]
            : [];
}
