using Spoolbook.Checks.Running;
using Spoolbook.Film;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Focusing;

static class NearerThanLens
{
    public static readonly RecordCheck Check = new("focus/nearer-than-lens", Level.Warning, Look);

    static bool IsNearer(Context context, Distance focus, Distance nearest) =>
        !focus.IsInfinity && Nearer(focus, nearest) > context.Of(Tolerances.TapeSlack);

    // Of the nearest, the part that is missing.
    static Ratio Nearer(Distance focus, Distance nearest) =>
        nearest.Millimetres.Sign == 0 ? 0 : 1 - (focus.Millimetres / nearest.Millimetres);

    static string Percent(Ratio part) => (part * 100).ToShortText(1) + " %";

    static IEnumerable<Finding> Look(Context context) =>
        from roll in context.Production.Rolls
        from take in roll.Takes
        let nearest = context.Production.LensNamed(take.Lens?.Value)?.Nearest
        where take.Focus is not null && nearest is not null && IsNearer(context, take.Focus.Value, nearest.Value)
        select Check.At(
            roll,
            take,
            take.Focus!.Place,
            Sentence.Of(
                "focus/nearer-than-lens.message",
                ("take", take.Slate),
                ("focus", context.Write(take.Focus.Value)),
                ("lens", take.Lens!.Value),
                ("nearest", context.Write(nearest.Value))
            )
        ) with
        {
            Others = [new(nearest.Place, Sentence.Of("focus/nearer-than-lens.other.the-nearest-that-it-focuses"))],
            Figures =
            [
                new(Sentence.Of("focus/nearer-than-lens.figure.nearer-by"), Percent(Nearer(take.Focus.Value, nearest.Value))),
                new(Sentence.Of("focus/nearer-than-lens.figure.let-pass"), Percent(context.Of(Tolerances.TapeSlack))),
            ],
            Advice = Sentence.Of("focus/nearer-than-lens.help"),
        };
}
