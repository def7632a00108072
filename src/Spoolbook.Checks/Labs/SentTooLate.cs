using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Labs;

static class SentTooLate
{
    public static readonly RecordCheck Check = new("lab/sent-too-late", Level.Warning, Look);

    // Once for each day of sending.
    static IEnumerable<Finding> Look(Context context) =>
        from needed in new[] { context.Production.Lab?.NeededBy }
        where needed is not null
        from sent in context.SentOn(day => day > needed.Value)
        let first = sent.First()
        select Check.At(
            first.Roll,
            first.Sent.Place,
            Sentence.Of(
                "lab/sent-too-late.message",
                ("rolls", Context.And(sent.Select(s => s.Roll.Name.Value))),
                ("sent", Context.Day(sent.Key)),
                ("needed", Context.Day(needed.Value))
            )
        ) with
        {
            Others = [new Related(needed.Place, Sentence.Of("lab/sent-too-late.other"))],
            Advice = Sentence.Of("lab/sent-too-late.help"),
        };
}
