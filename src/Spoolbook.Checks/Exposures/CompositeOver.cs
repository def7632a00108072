using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Checks.Exposures;

static class CompositeOver
{
    public static readonly RollCheck Check = new("exposure/composite-over", Level.Warning, Round.Strips, Look);

    static IEnumerable<Finding> Look(Context context, RollBook book) =>
        from effect in Superimposed.Of(book)
        where effect.Worst > context.Of(Tolerances.CompositeOver)
        let last = effect.Layers[^1].Take
        select Check.At(book.Roll, last, last.Exposed?.Place ?? last.Number.Place, $"Takes {Superimposed.Slates(effect)} lie over one another and come to {Context.Stops(Math.Abs(effect.Worst))} over") with
        {
            Others = [.. effect.Layers.SkipLast(1).Select(l => new Related(l.Take.Exposed?.Place ?? l.Take.Number.Place, $"take {l.Take.Slate}"))],
            Figures = [.. effect.Layers.Select(l => new Figure(l.Take.Slate, Superimposed.Level(l))), new Figure("together", Context.Amount(effect.Worst))],
            Help = "Passes add up: shoot each of two a stop under, each of three a stop and a half. If they were, write it on each, `exposed: -1`. Against a black ground both may be full: then accept it with that reason.",
        };
}
