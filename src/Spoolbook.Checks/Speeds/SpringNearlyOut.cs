using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Speeds;

static class SpringNearlyOut
{
    public static readonly RollCheck Check = new("speed/spring-nearly-out", Level.Note, Round.Strips, Look);

    // Once for each winding, at the take that came close, and not where another take on the same winding ran too far.
    static IEnumerable<Finding> Look(Context context, RollBook book)
    {
        var runs = SpringRuns.Of(context, book).ToArray();
        return from at in Enumerable.Range(0, runs.Length)
               let run = runs[at]
               let next = runs.ElementAtOrDefault(at + 1)
               where next?.Winding != run.Winding && IsNear(context, run)
               select Find(context, book, run);
    }

    static bool IsNear(Context context, SpringRuns.Run run) =>
        run.Driven > run.FullWind.Value - context.Of(Tolerances.SpringReserve)
        && run.Driven <= run.FullWind.Value + context.Of(Tolerances.SpringSlack);

    static Finding Find(Context context, RollBook book, SpringRuns.Run run)
    {
        var (take, driven, wind) = (run.Layer.Take, context.Write(run.Driven), context.Write(run.FullWind.Value));
        return Check.At(book.Roll, take, take.To.Place, Sentence.Of("speed/spring-nearly-out.message", ("take", take.Slate))) with
        {
            Others =
            [
                new Related(
                    run.WoundAt ?? run.FullWind.Place,
                    run.WoundAt is null
                        ? Sentence.Of("speed/spring-nearly-out.other.a-full-wind")
                        : Sentence.Of("speed/spring-nearly-out.other.last-wound-here")
                ),
            ],
            Figures =
            [
                new Figure(Sentence.Of("speed/spring-nearly-out.figure.driven"), driven),
                new Figure(Sentence.Of("speed/spring-nearly-out.figure.full-wind"), wind),
            ],
            Advice = Sentence.Of("speed/spring-nearly-out.help"),
        };
    }
}
