using Spoolbook.Checks.Running;
using Spoolbook.Film.Scans;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Labs;

static class FileRateDiffers
{
    public static readonly RecordCheck Check = new("lab/file-rate-differs", Level.Warning, Look);

    static IEnumerable<Finding> Look(Context context) =>
        from rate in new[] { context.Production.Lab?.Deliver?.Rate }
        where rate is not null
        let change = new RateChange(context.Production.ProjectedAt, rate.Value)
        where !change.IsNone
        select Check.At(
            rate.Place,
            Sentence.Of(
                change.Percent.Sign > 0 ? "lab/file-rate-differs.message.faster" : "lab/file-rate-differs.message.slower",
                ("file", rate.Value.ToString()),
                ("projected", context.Production.ProjectedAt.ToString()),
                ("percent", SyncWithoutRatio.PercentOf(change))
            )
        ) with
        {
            Advice = Sentence.Of(
                "lab/file-rate-differs.help",
                ("file", rate.Value.ToString()),
                ("projected", context.Production.ProjectedAt.ToString())
            ),
        };
}
