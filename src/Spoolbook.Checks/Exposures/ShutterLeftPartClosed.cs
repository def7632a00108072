using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Checks.Exposures;

static class ShutterLeftPartClosed
{
    public static readonly RecordCheck Check = new("exposure/shutter-left-part-closed", Level.Warning, Look);

    static IEnumerable<Finding> Look(Context context) =>
        from metering in Metering.Of(context)
        where metering.ForgotShutter && !metering.ForgotFilter
        select Check.At(metering.Roll, metering.Take, metering.Take.Stop!.Place, $"Take {metering.Take.Slate} was set as if the shutter were open: it is {Context.Stops(metering.ShutterLoss)} under") with
        {
            Others = [new(metering.Take.Shutter!.Place, "how the shutter stood")],
            Figures = [.. Latitude.Figures(metering)],
            Help = $"See whether the shutter was left part closed from the take before. Then this take is thin: shoot it again, or say `exposed: {Context.Exposed(-metering.ShutterLoss)}` if it was meant.",
        };
}
