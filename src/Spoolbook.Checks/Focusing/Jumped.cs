using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Focusing;

static class Jumped
{
    public static readonly RecordCheck Check = new("focus/jumped", Level.Note, Look);

    // Subjects move between takes, and the camera goes closer for the last one. Three times as far is another shot.
    const double MostTimes = 3;

    static IEnumerable<Finding> Look(Context context) =>
        from next in context.TakesOfOneShot()
        let before = next.Before
        let take = next.Take
        where IsSameSetUp(before, take) && AreApart(context, before, take)
        select Check.At(
            next.Roll,
            take,
            take.Focus!.Place,
            Sentence.Of(
                "focus/jumped.message",
                ("take", take.Slate),
                ("focus", context.Write(take.Focus.Value)),
                ("before", before.Slate),
                ("before-focus", context.Write(before.Focus!.Value)),
                ("lens", take.Lens!.Value),
                ("stop", take.Stop!.Value.ToString())
            )
        ) with
        {
            Others = [new Related(before.Focus.Place, Sentence.Of("focus/jumped.other", ("take", before.Slate)))],
            Advice = Sentence.Of("focus/jumped.help"),
        };

    // Where the tape was laid, it says that the subject moved.
    static bool IsSameSetUp(Take before, Take take) =>
        before is { Focus: not null, Stop: not null }
        && take is { Focus: not null, Stop: not null, Measured: [] }
        && take.Lens is not null
        && take.Lens.Value == before.Lens?.Value;

    // What is sharp in the one is far from all that is sharp in the other.
    static bool AreApart(Context context, Take before, Take take) =>
        Depth.Of(context, before) is { } a
        && Depth.Of(context, take) is { } b
        && (a.Far * MostTimes < b.Near || b.Far * MostTimes < a.Near);
}
