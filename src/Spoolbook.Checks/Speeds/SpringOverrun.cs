using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Speeds;

static class SpringOverrun
{
    public static readonly RollCheck Check = new("speed/spring-overrun", Level.Warning, Round.Strips, Look);

    static IEnumerable<Finding> Look(Context context, RollBook book) =>
        from run in SpringRuns.Of(context, book)
        let most = run.FullWind.Value + context.Of(Tolerances.SpringSlack)
        where run.Driven > most && run.Driven - run.Layer.Span.Length <= most
        select Overrun(context, book.Roll, run);

    static Finding Overrun(Context context, Roll roll, SpringRuns.Run run)
    {
        var take = run.Layer.Take;
        var (driven, wind) = (context.Write(run.Driven), context.Write(run.FullWind.Value));
        return Check.At(
            roll,
            take,
            take.To.Place,
            Sentence.Of(
                run.Driven == run.Layer.Span.Length ? "speed/spring-overrun.message.one-take" : "speed/spring-overrun.message.takes",
                ("take", take.Slate),
                ("driven", driven),
                ("wind", wind)
            )
        ) with
        {
            Others =
            [
                new Related(
                    run.WoundAt ?? run.FullWind.Place,
                    run.WoundAt is null
                        ? Sentence.Of("speed/spring-overrun.other.a-full-wind")
                        : Sentence.Of("speed/spring-overrun.other.last-wound-here")
                ),
            ],
            Figures =
            [
                new Figure(Sentence.Of("speed/spring-overrun.figure.driven"), driven),
                new Figure(Sentence.Of("speed/spring-overrun.figure.full-wind"), wind),
                new Figure(Sentence.Of("speed/spring-overrun.figure.over-by"), context.Write(run.Driven - run.FullWind.Value)),
            ],
            Advice = Sentence.Of("speed/spring-overrun.help"),
        };
    }
}
