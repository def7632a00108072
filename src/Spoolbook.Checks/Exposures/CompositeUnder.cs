using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Exposures;

static class CompositeUnder
{
    public static readonly RollCheck Check = new("exposure/composite-under", Level.Warning, Round.Strips, Look);

    static IEnumerable<Finding> Look(Context context, RollBook book) =>
        from effect in Superimposed.Of(book)
        where effect.Worst < -context.Of(Tolerances.CompositeUnder)
        let last = effect.Layers[^1].Take
        select Check.At(
            book.Roll,
            last,
            last.Exposed?.Place ?? last.Number.Place,
            Sentence.Of(
                "exposure/composite-under.message",
                ("takes", Superimposed.Slates(effect)),
                ("worst", Context.Stops(Math.Abs(effect.Worst)))
            )
        ) with
        {
            Others =
            [
                .. effect
                    .Layers.SkipLast(1)
                    .Select(l => new Related(
                        l.Take.Exposed?.Place ?? l.Take.Number.Place,
                        Sentence.Of("exposure/composite-under.other.take", ("take", l.Take.Slate))
                    )),
            ],
            Figures =
            [
                .. effect.Layers.Select(l => new Figure(Sentence.Plain(l.Take.Slate), Superimposed.Level(l))),
                new Figure(Sentence.Of("exposure/composite-under.figure.together"), Context.Amount(effect.Worst)),
            ],
            Advice = Sentence.Of("exposure/composite-under.help"),
        };
}
