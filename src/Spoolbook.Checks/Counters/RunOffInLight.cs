using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Counters;

static class RunOffInLight
{
    public static readonly RollCheck Check = new("counter/run-off-in-light", Level.Warning, Round.Strips, Look);

    static IEnumerable<Finding> Look(Context context, RollBook book) =>
        from light in book.Strip.Stray
        where light.Entry is RunOff && light.Layers.Length > 0
        let slates = string.Join(", ", light.Layers.Select(l => l.Take.Slate))
        select Check.At(book.Roll, light.Entry.Place, Sentence.Of("counter/run-off-in-light.message", ("slates", slates))) with
        {
            Others =
            [
                .. light.Layers.Select(l => new Related(
                    l.Take.Number.Place,
                    Sentence.Of("counter/run-off-in-light.other.take-is-on-that-film", ("take", l.Take.Slate))
                )),
            ],
            Figures =
            [
                new Figure(Sentence.Of("counter/run-off-in-light.figure.from"), context.Write(light.Span.From)),
                new Figure(Sentence.Of("counter/run-off-in-light.figure.to"), context.Write(light.Span.To)),
            ],
            Advice = Sentence.Of("counter/run-off-in-light.help"),
        };
}
