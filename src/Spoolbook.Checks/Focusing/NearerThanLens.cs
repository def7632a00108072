using Spoolbook.Checks.Running;
using Spoolbook.Film;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Focusing;

static class NearerThanLens
{
    public static readonly RecordCheck Check = new("focus/nearer-than-lens", Level.Warning, Look);

    // A tape is read to a finger's breadth, two hundredths of a yard.
    static bool IsNearer(Distance focus, Distance nearest) => !focus.IsInfinity && focus.Millimetres * 102 < nearest.Millimetres * 100;

    static IEnumerable<Finding> Look(Context context) =>
        from roll in context.Production.Rolls
        from take in roll.Takes
        let nearest = context.Production.LensNamed(take.Lens?.Value)?.Nearest
        where take.Focus is not null && nearest is not null && IsNearer(take.Focus.Value, nearest.Value)
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
            Advice = Sentence.Of("focus/nearer-than-lens.help"),
        };
}
