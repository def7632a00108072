using Spoolbook.Checks.Running;
using Spoolbook.Film;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Coverage;

static class ScreenDiffers
{
    public static readonly RecordCheck Check = new("cover/screen-differs", Level.Warning, Look);

    // Boards are rough: the shots and the running time are meant to be near each other, and seldom equal.
    const double MostApart = 0.25;

    static IEnumerable<Finding> Look(Context context)
    {
        var (shots, planned) = (context.Production.Shots, context.Production.RunningTime);
        if (planned is null || shots.IsEmpty || shots.Any(s => s.Screen is null) || planned.Value.Sign <= 0)
        {
            return [];
        }

        var together = shots.Aggregate(Ratio.Zero, (sum, s) => sum + s.Screen!.Value);
        var apart = (together / planned.Value).ToDouble() - 1;
        return Math.Abs(apart) <= MostApart
            ? []
            :
            [
                Check.At(
                    planned.Place,
                    Sentence.Of(
                        apart > 0 ? "cover/screen-differs.message.more" : "cover/screen-differs.message.less",
                        ("together", together.ToShortText(1)),
                        ("planned", planned.Value.ToShortText(1))
                    )
                ) with
                {
                    Others =
                    [
                        new Related(shots.MaxBy(s => s.Screen!.Value.ToDouble())!.Screen!.Place, Sentence.Of("cover/screen-differs.other")),
                    ],
                    Advice = Sentence.Of("cover/screen-differs.help"),
                },
            ];
    }
}
