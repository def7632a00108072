using Spoolbook.Checks.Running;
using Spoolbook.Film;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Checks.Counters;

static class PassOutside
{
    public static readonly RollCheck Check = new("counter/pass-outside", Level.Warning, Round.Strips, Look);

    static IEnumerable<Finding> Look(Context context, RollBook book) =>
        from over in book.Layers
        from under in book.Layers
        where IsOutside(context, book, over, under)
        select Find(context, book.Roll, over, under);

    /// <summary>Whether a later pass runs on past the take that it covers, into one that it was not meant for.</summary>
    public static bool IsOutside(Context context, RollBook book, Layer over, Layer under) =>
        over.Pass > under.Pass && RunsInto(over, under, context.Of(Tolerances.PassSlack)) && LiesOnAnother(book, over, under);

    // Covering a whole take is intentional. So is ending inside a take where either fades: that is a dissolve.
    static bool RunsInto(Layer over, Layer under, Footage slack) =>
        over.Span.From < under.Span.From
        && over.Span.To > under.Span.From + slack
        && over.Span.To < under.Span.To - slack
        && over.FadeOut == Footage.Zero
        && under.FadeIn == Footage.Zero;

    // The pass covers an earlier take and runs on into the next.
    static bool LiesOnAnother(RollBook book, Layer over, Layer under) =>
        book.Layers.Any(l =>
            l.Pass < over.Pass && l.Span.To <= under.Span.From && l.Span.Overlaps(over.Span) && l.Take.Mark.Value != Mark.Test
        );

    static Finding Find(Context context, Roll roll, Layer over, Layer under)
    {
        var by = context.Write(over.Span.To - under.Span.From);
        return Check.At(
            roll,
            over.Take,
            over.Take.To.Place,
            Sentence.Of("counter/pass-outside.message", ("take", over.Take.Slate), ("by", by), ("under-take", under.Take.Slate))
        ) with
        {
            Others =
            [
                new Related(
                    under.Take.Number.Place,
                    Sentence.Of(
                        "counter/pass-outside.other.take-starts-at",
                        ("take", under.Take.Slate),
                        ("from", context.Write(under.Span.From))
                    )
                ),
            ],
            Figures =
            [
                new Figure(Sentence.Of("counter/pass-outside.figure.starts", ("take", under.Take.Slate)), context.Write(under.Span.From)),
                new Figure(Sentence.Of("counter/pass-outside.figure.ends", ("take", over.Take.Slate)), context.Write(over.Span.To)),
                new Figure(Sentence.Of("counter/pass-outside.figure.runs-into-it-by"), by),
            ],
            Advice = Sentence.Of("counter/pass-outside.help", ("take", under.Take.Slate)),
        };
    }
}
