using Spoolbook.Checks.Coverage;
using Spoolbook.Checks.Running;
using Spoolbook.Film;
using Spoolbook.Shoot;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Stocks;

static class PlanDiffers
{
    public static readonly BookCheck Check = new("stock/plan-differs", Level.Note, Look);

    // Stock is bought by the can and shared, and a ratio is a hope: twice as much and half as much are plans of somebody.
    const int MostTimes = 4;

    static IEnumerable<Finding> Look(Context context, Books books)
    {
        if (context.Production is not { RunningTime: { } time, PlannedRatio: { } ratio } || time.Value.Sign <= 0 || ratio.Value.Sign <= 0)
        {
            yield break;
        }

        // A running time that the shots contradict is flagged already.
        if (ScreenDiffers.Check.Look(context).Any())
        {
            yield break;
        }

        var planned = Footage.RunningFor(time.Value * ratio.Value, context.Production.ProjectedAt);
        var came = new Footage(books.Stock.Lots.Where(l => !l.IsPractice).Sum(l => l.Received.Frames + l.Came.Frames));
        if (came.Frames == 0 || (planned.Frames <= came.Frames * MostTimes && came.Frames <= planned.Frames * MostTimes))
        {
            yield break;
        }

        yield return Check.At(
            ratio.Place,
            Sentence.Of(
                came > planned ? "stock/plan-differs.message.more" : "stock/plan-differs.message.less",
                ("planned", context.Write(planned)),
                ("came", context.Write(came))
            )
        ) with
        {
            Others = [new Related(time.Place, Sentence.Of("stock/plan-differs.other"))],
            Figures =
            [
                new Figure(Sentence.Of("stock/plan-differs.figure.planned"), context.Write(planned)),
                new Figure(Sentence.Of("stock/plan-differs.figure.came"), context.Write(came)),
            ],
            Advice = Sentence.Of("stock/plan-differs.help"),
        };
    }
}
