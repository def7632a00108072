using Spoolbook.Checks.Running;
using Spoolbook.Film;
using Spoolbook.Shoot;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Coverage;

static class TakesTooShort
{
    public static readonly BookCheck Check = new("cover/takes-too-short", Level.Note, Look);

    // Boards are rough, and an editor holds a shot longer or shorter. A third of it is no matter of taste.
    static readonly Ratio _leastPart = new(1, 3);

    static IEnumerable<Finding> Look(Context context, Books books) =>
        from shot in ScreenDiffers.Check.Look(context).Any() ? [] : books.Coverage.ListedOnce
        where shot is { IsGot: true, Planned.Screen: not null }
        let usable = RunningOf(context, shot)
        let wanted = shot.Planned!.Screen!
        where usable < wanted.Value * _leastPart
        select Check.At(
            wanted.Place,
            Sentence.Of(
                "cover/takes-too-short.message",
                ("shot", shot.Name),
                ("wanted", wanted.Value.ToShortText(1)),
                ("usable", usable.ToShortText(1))
            )
        ) with
        {
            Shot = shot.Name,
            Others =
            [
                new Related(
                    shot.Good.First().Layer.Take.Number.Place,
                    Sentence.Of("cover/takes-too-short.other", ("take", shot.Good.First().Layer.Take.Slate))
                ),
            ],
            Advice = Sentence.Of("cover/takes-too-short.help"),
        };

    // All of it together: a long shot may be cut from several takes, and a safety serves too.
    static Ratio RunningOf(Context context, CoveredShot shot) =>
        shot
            .Takes.Where(t => t.Layer.Take.Mark.Value is Mark.Good or Mark.Hold)
            .Aggregate(Ratio.Zero, (sum, t) => sum + (t.Layer.Span.Length.Frames / context.Production.ProjectedAt.FramesPerSecond));
}
