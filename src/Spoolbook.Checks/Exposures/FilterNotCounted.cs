using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Checks.Exposures;

static class FilterNotCounted
{
    public static readonly RecordCheck Check = new("exposure/filter-not-counted", Level.Warning, Look);

    static IEnumerable<Finding> Look(Context context) =>
        from metering in Metering.Of(context)
        where metering.ForgotFilter
        select Check.At(metering.Roll, metering.Take, metering.Take.Stop!.Place, $"Take {metering.Take.Slate} was shot through a filter, and the lens was set as if there were none: it is {Context.Stops(metering.FilterLoss)} under") with
        {
            Others = [new(metering.Take.Filters[0].Place, "the filter")],
            Figures = [.. Latitude.Figures(metering)],
            Help = $"If the meter was read through the filter, write the reading without it. If not, shoot it again at {metering.Needed.ToText(Film.StopStep.Third)}.",
        };
}
