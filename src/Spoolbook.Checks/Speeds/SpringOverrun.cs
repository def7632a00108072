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
        var what = run.Driven == run.Layer.Span.Length ? $"Take {take.Slate} is {driven} long" : $"By the end of take {take.Slate} the spring has driven {driven} since it was wound";
        return Check.At(roll, take, take.To.Place, $"{what}, and a full wind drives {wind}: the end ran slow, and is overexposed") with
        {
            Others = [new Related(run.WoundAt ?? run.FullWind.Place, run.WoundAt is null ? "a full wind" : "last wound here")],
            Figures = [new Figure("driven", driven), new Figure("full wind", wind), new Figure("over by", context.Write(run.Driven - run.FullWind.Value))],
            Help = "If the spring was wound in between, write `- wind: {}` where that was; if a motor drove it, `motor: …` on the take. If not, tell the editor to cut before the end, or accept it if the slowing is meant.",
        };
    }
}
