using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Checks.Exposures;

static class CompositeUnder
{
    public static readonly RollCheck Check = new("exposure/composite-under", Level.Warning, Round.Strips, Look);

    static IEnumerable<Finding> Look(Context context, RollBook book) =>
        from effect in Superimposed.Of(book)
        where effect.Worst < -context.Of(Tolerances.CompositeUnder)
        let last = effect.Layers[^1].Take
        select Check.At(book.Roll, last, last.Exposed?.Place ?? last.Number.Place, $"Takes {Superimposed.Slates(effect)} lie over one another and come to {Context.Stops(Math.Abs(effect.Worst))} under") with
        {
            Others = [.. effect.Layers.SkipLast(1).Select(l => new Related(l.Take.Exposed?.Place ?? l.Take.Number.Place, $"take {l.Take.Slate}"))],
            Figures = [.. effect.Layers.Select(l => new Figure(l.Take.Slate, Superimposed.Level(l))), new Figure("together", Context.Amount(effect.Worst))],
            Help = "Passes add up: each of two is shot a stop under, each of three a stop and a half, and no more. See whether `exposed:` is right on each; if it is, the picture is too dark, and has to be shot again or printed up.",
        };
}
