using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Walks;

namespace Spoolbook.Checks.Speeds;

static class WindMissed
{
    public static readonly RollCheck Check = new("speed/wind-missed", Level.Note, Round.Strips, Look);

    // A habit takes some takes to be one.
    const int FewestWound = 3;

    static IEnumerable<Finding> Look(Context context, RollBook book)
    {
        var takes = Takes(book.Walk).ToArray();
        var without = takes.Where(t => !t.IsWound).Select(t => t.Take).ToArray();
        if (book.Roll.IsPractice || without is not [var take] || takes.Length - 1 < FewestWound || IsRunDown(context, book, take))
        {
            yield break;
        }

        yield return Check.At(
            book.Roll,
            take,
            take.Number.Place,
            Sentence.Of(
                ReferenceEquals(take, takes[0].Take) ? "speed/wind-missed.message.first" : "speed/wind-missed.message",
                ("take", take.Slate),
                ("roll", book.Roll.Name.Value)
            )
        ) with
        {
            Advice = Sentence.Of("speed/wind-missed.help"),
        };
    }

    // A spring that ran out has its own finding.
    static bool IsRunDown(Context context, RollBook book, Take take) =>
        SpringRuns.Of(context, book).FirstOrDefault(r => ReferenceEquals(r.Layer.Take, take)) is { } run
        && run.Driven + context.Of(Tolerances.SpringReserve) > run.FullWind.Value;

    // The takes on the spring, each with whether it was wound since the take before, or since loading.
    static IEnumerable<(Take Take, bool IsWound)> Takes(RollWalk walk)
    {
        var isWound = false;
        foreach (var moment in walk.Moments)
        {
            switch (moment.Entry)
            {
                case Wind:
                    isWound = true;
                    break;
                case Take { IsOnSpring: true, IsFrameByFrame: false } take:
                    yield return (take, isWound || take.Wound?.Value == true);
                    isWound = false;
                    break;
            }
        }
    }
}
