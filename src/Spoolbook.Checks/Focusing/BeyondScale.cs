using Spoolbook.Checks.Running;
using Spoolbook.Film;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Focusing;

static class BeyondScale
{
    public static readonly RecordCheck Check = new("focus/beyond-scale", Level.Note, Look);

    // The last figure before infinity is at some 300 to 600 focal lengths: 15 ft on a 10 mm lens, 50 ft on a 25 mm, 100 ft on a
    // 75 mm (from memory).
    static readonly Ratio _mostFocals = new(650, 1);

    static IEnumerable<Finding> Look(Context context) =>
        from roll in context.Production.Rolls
        where !roll.IsPractice
        from take in roll.Takes
        let focal = context.Production.LensNamed(take.Lens?.Value)?.Focal
        where focal is not null && take.Focus is { Value.IsInfinity: false } focus && focus.Value.Millimetres > focal.Value * _mostFocals
        select Check.At(
            roll,
            take,
            take.Focus!.Place,
            Sentence.Of(
                "focus/beyond-scale.message",
                ("take", take.Slate),
                ("focus", context.Write(take.Focus.Value)),
                ("lens", take.Lens!.Value)
            )
        ) with
        {
            Others = [new Related(focal.Place, Sentence.Of("focus/beyond-scale.other"))],
            Figures = [new Figure(Sentence.Of("focus/beyond-scale.figure.last"), context.Write((focal.Value * _mostFocals).ToDouble()))],
            Advice = Sentence.Of("focus/beyond-scale.help"),
        };
}
