using Spoolbook.Checks.Running;
using Spoolbook.Film;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Counters;

static class RewindPastHead
{
    public static readonly RollCheck Check = new("counter/rewind-past-head", Level.Warning, Round.Strips, Look);

    // Winding back too far and then running on with the lens capped is fine.
    static IEnumerable<Finding> Look(Context context, RollBook book) =>
        from pass in SecondPasses.Find(book)
        let start = pass.First.Span.From
        where book.Roll.Load.Head is { } head && start < head.Value
        select Find(context, book.Roll, pass, book.Roll.Load.Head!);

    static Finding Find(Context context, Roll roll, SecondPasses.Start pass, Located<Footage> head)
    {
        var start = context.Write(pass.First.Span.From);
        return Check.At(
            roll,
            pass.First.Take,
            pass.Rewind.To.Place,
            Sentence.Of("counter/rewind-past-head.message", ("start", start), ("head", context.Write(head.Value)))
        ) with
        {
            Others = [new Related(head.Place, Sentence.Of("counter/rewind-past-head.other.lost-in-loading"))],
            Figures =
            [
                new Figure(Sentence.Of("counter/rewind-past-head.figure.head"), context.Write(head.Value)),
                new Figure(Sentence.Of("counter/rewind-past-head.figure.the-pass-starts"), start),
            ],
            Advice = Sentence.Of("counter/rewind-past-head.help", ("take", pass.First.Take.Slate), ("head", context.Write(head.Value))),
        };
    }
}
