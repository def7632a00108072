using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Exposures;

static class ShutterLeftPartClosed
{
    public static readonly RecordCheck Check = new("exposure/shutter-left-part-closed", Level.Warning, Look);

    static IEnumerable<Finding> Look(Context context) =>
        from metering in Metering.Of(context)
        where metering.ForgotShutter && !metering.ForgotFilter
        select Check.At(
            metering.Roll,
            metering.Take,
            metering.Take.Stop!.Place,
            Sentence.Of(
                "exposure/shutter-left-part-closed.message",
                ("take", metering.Take.Slate),
                ("shutter", metering.Take.Shutter!.Value),
                ("shutter-loss", Context.Stops(metering.ShutterLoss))
            )
        ) with
        {
            Others = [new(metering.Take.Shutter!.Place, Sentence.Of("exposure/shutter-left-part-closed.other.how-the-shutter-stood"))],
            Figures = [.. Latitude.Figures(metering)],
            Advice = Sentence.Of("exposure/shutter-left-part-closed.help", ("exposed", Context.Exposed(-metering.ShutterLoss))),
        };
}
