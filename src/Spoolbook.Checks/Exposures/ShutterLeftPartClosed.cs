using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Checks.Exposures;

static class ShutterLeftPartClosed
{
    public static readonly RecordCheck Check = new("exposure/shutter-left-part-closed", Level.Warning, Look);

    static IEnumerable<Finding> Look(Context context) =>
        from metering in Metering.Of(context)
        where metering.ForgotShutter && !metering.ForgotFilter
        select Check.At(metering.Roll, metering.Take, metering.Take.Stop!.Place, $"Take {metering.Take.Slate} was shot with the shutter at `{metering.Take.Shutter!.Value}`, and the lens was set as if it were open: it is {Context.Stops(metering.ShutterLoss)} under") with
        {
            Others = [new(metering.Take.Shutter!.Place, "how the shutter stood")],
            Figures = [.. Latitude.Figures(metering)],
            Help = $"If the shutter was left part closed from an earlier take, open it and shoot this one again. If the darker picture was meant, write `exposed: {Context.Exposed(-metering.ShutterLoss)}`; if the shutter was open, take `shutter:` out.",
        };
}
