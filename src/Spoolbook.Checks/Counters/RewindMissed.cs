using Spoolbook.Checks.Running;
using Spoolbook.Film;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Counters;

static class RewindMissed
{
    public static readonly RollCheck Check = new("counter/rewind-missed", Level.Warning, Round.Strips, Look);

    static IEnumerable<Finding> Look(Context context, RollBook book) =>
        from pass in SecondPasses.Find(book)
        where !pass.IsDissolve
        let missed = Missed(context, book, pass)
        where missed is not null
        select missed;

    static Finding? Missed(Context context, RollBook book, SecondPasses.Start pass)
    {
        var start = pass.First.Span.From;
        var earlier = book.Layers.Where(l => l.Pass < pass.First.Pass).ToArray();
        var inHead = book.Roll.Load.Head is { } head && start < head.Value;
        if (inHead || earlier.Any(l => l.Span.From == start))
        {
            return null;
        }

        var near = earlier
            .Where(l => Distance(l.Span.From, start) <= context.Of(Tolerances.RewindNear).Frames)
            .MinBy(l => Distance(l.Span.From, start));
        if (near is null)
        {
            return null;
        }

        var off = start - near.Span.From;
        var amount = Context.Frames(Math.Abs(off.Frames));
        return Check.At(
            book.Roll,
            pass.First.Take,
            pass.Rewind.To.Place,
            Sentence.Of(
                off > Footage.Zero ? "counter/rewind-missed.message.late" : "counter/rewind-missed.message.early",
                ("take", pass.First.Take.Slate),
                ("amount", amount),
                ("near-take", near.Take.Slate)
            )
        ) with
        {
            Others =
            [
                new Related(
                    near.Take.Number.Place,
                    Sentence.Of(
                        "counter/rewind-missed.other.take-starts-at",
                        ("take", near.Take.Slate),
                        ("from", context.Write(near.Span.From))
                    )
                ),
            ],
            Figures =
            [
                new Figure(
                    Sentence.Of("counter/rewind-missed.figure.starts.earlier", ("take", near.Take.Slate)),
                    context.Write(near.Span.From)
                ),
                new Figure(Sentence.Of("counter/rewind-missed.figure.starts.pass", ("take", pass.First.Take.Slate)), context.Write(start)),
                new Figure(Sentence.Of("counter/rewind-missed.figure.out-by"), amount),
            ],
            Advice = Sentence.Of("counter/rewind-missed.help", ("start", context.Write(near.Span.From - pass.ZeroMoved))),
        };
    }

    static long Distance(Footage a, Footage b) => Math.Abs((a - b).Frames);
}
