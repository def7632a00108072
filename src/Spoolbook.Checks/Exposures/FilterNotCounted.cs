using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Exposures;

static class FilterNotCounted
{
    public static readonly RecordCheck Check = new("exposure/filter-not-counted", Level.Warning, Look);

    static IEnumerable<Finding> Look(Context context) =>
        from metering in Metering.Of(context)
        where metering.ForgotFilter
        select Check.At(
            metering.Roll,
            metering.Take,
            metering.Take.Stop!.Place,
            Sentence.Of(
                "exposure/filter-not-counted.message",
                ("take", metering.Take.Slate),
                ("filter-loss", Context.Stops(metering.FilterLoss))
            )
        ) with
        {
            Others = [new(metering.Take.Filters[0].Place, Sentence.Of("exposure/filter-not-counted.other.the-filter"))],
            Figures = [.. Latitude.Figures(metering)],
            Advice = Sentence.Of("exposure/filter-not-counted.help", ("needed", metering.Needed.ToText(Film.StopStep.Third))),
        };
}
