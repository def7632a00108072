using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Checks.Exposures;

static class Over
{
    public static readonly RecordCheck Check = new("exposure/over", Level.Warning, Look);

    static IEnumerable<Finding> Look(Context context) =>
        from metering in Metering.Of(context)
        where metering.Off > Latitude.Over(context, metering.Roll)
        let amount = Context.Stops(metering.Off)
        select Check.At(metering.Roll, metering.Take, metering.Take.Stop!.Place, $"Take {metering.Take.Slate} is {amount} over: by the meter the lens belonged at {metering.Needed.ToText(Film.StopStep.Third)}, and it stood at {metering.Take.Stop.Value}") with
        {
            Others = [new(metering.Take.Reading!.Place, "what the meter asked for")],
            Figures = [.. Latitude.Figures(metering)],
            Help = $"If it was meant, say so on the take: `exposed: {Context.Exposed(metering.Off + (metering.Take.Exposed?.Value ?? 0))}`. If not, tell the lab, since it can print or scan it down.",
        };
}
