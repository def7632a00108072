using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Coverage;

static class LensChanged
{
    public static readonly RecordCheck Check = new("cover/lens-changed", Level.Note, Look);

    static IEnumerable<Finding> Look(Context context) =>
        from next in context.TakesOfOneShot()
        let before = next.Before
        let take = next.Take
        where OnlyLensDiffers(before, take)
        where context.Production.LensNamed(before.Lens!.Value) is not null && context.Production.LensNamed(take.Lens!.Value) is not null
        select Check.At(
            next.Roll,
            take,
            take.Lens!.Place,
            Sentence.Of(
                "cover/lens-changed.message",
                ("take", take.Slate),
                ("lens", take.Lens.Value),
                ("other", before.Slate),
                ("other-lens", before.Lens!.Value)
            )
        ) with
        {
            Others = [new Related(before.Lens.Place, Sentence.Of("cover/lens-changed.other", ("take", before.Slate)))],
            Advice = Sentence.Of("cover/lens-changed.help"),
        };

    // Who changes the lens measures again. Where stop, reading and focus are the same, the lens was copied from another line.
    static bool OnlyLensDiffers(Take before, Take take) =>
        take.Lens is not null
        && before.Lens is not null
        && take.Lens.Value != before.Lens.Value
        && take.Stop?.Value == before.Stop?.Value
        && take.Focus?.Value == before.Focus?.Value
        && (take.Reading is null || before.Reading is null || take.Reading.Value == before.Reading.Value);
}
