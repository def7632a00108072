using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Focusing;

static class LensNotForFinder
{
    public static readonly RecordCheck Check = new("focus/lens-not-for-finder", Level.Warning, Look);

    static IEnumerable<Finding> Look(Context context) =>
        from wrong in (
            from roll in context.Production.Rolls
            where !roll.IsPractice
            from shot in context.TakesWithBodies(roll)
            let lens = context.Production.LensNamed(shot.Take.Lens?.Value)
            where lens is not null && IsWrong(lens, shot.Body, context.Of(Tolerances.PrismFocal))
            group (Roll: roll, shot.Take, Body: shot.Body!) by lens
        )
        let first = wrong.First()
        let prism = first.Body.HasPrism == true
        select Check.At(
            first.Roll,
            first.Take,
            first.Take.Lens!.Place,
            Sentence.Of(
                prism ? "focus/lens-not-for-finder.message.prism" : "focus/lens-not-for-finder.message.air",
                ("take", first.Take.Slate),
                ("lens", wrong.Key.Name.Value),
                ("body", first.Body.Name.Value)
            )
        ) with
        {
            Others =
            [
                new(wrong.Key.MadeFor!.Place, Sentence.Of("focus/lens-not-for-finder.other.lens")),
                new(first.Body.FinderLoss!.Place, Sentence.Of("focus/lens-not-for-finder.other.finder")),
            ],
            Figures = [new(Sentence.Of("focus/lens-not-for-finder.figure.takes"), Context.Number(wrong.Count()))],
            Advice = Sentence.Of("focus/lens-not-for-finder.help"),
        };

    static bool IsWrong(Lens lens, Body? body, long longest) =>
        lens is { MadeFor: { } made, Focal: { } focal }
        && body?.HasPrism is { } prism
        && prism != (made.Value == LensMadeFor.Prism)
        && focal.Value <= longest;
}
