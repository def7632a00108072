using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Exposures;

static class Under
{
    public static readonly RecordCheck Check = new("exposure/under", Level.Warning, Look);

    static IEnumerable<Finding> Look(Context context) =>
        from metering in Metering.Of(context)
        where -metering.Off > Latitude.Under(context, metering.Roll) && !metering.ForgotFilter && !metering.ForgotShutter
        let amount = Context.Stops(-metering.Off)
        select Check.At(
            metering.Roll,
            metering.Take,
            metering.Take.Stop!.Place,
            Sentence.Of(
                "exposure/under.message",
                ("take", metering.Take.Slate),
                ("amount", amount),
                ("needed", metering.Needed.ToText(Film.StopStep.Third)),
                ("stop", metering.Take.Stop.Value.ToString())
            )
        ) with
        {
            Others = [new(metering.Take.Reading!.Place, Sentence.Of("exposure/under.other.what-the-meter-asked-for"))],
            Figures = [.. Latitude.Figures(metering)],
            Advice = Sentence.Of("exposure/under.help", ("exposed", Context.Exposed(metering.Off + (metering.Take.Exposed?.Value ?? 0)))),
        };
}
