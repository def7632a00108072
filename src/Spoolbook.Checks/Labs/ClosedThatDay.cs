using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Labs;

static class ClosedThatDay
{
    public static readonly RecordCheck Check = new("lab/closed-that-day", Level.Note, Look);

    // Once for each day of sending: one box waits for one door.
    static IEnumerable<Finding> Look(Context context) =>
        from lab in new[] { context.Production.Lab }
        where lab is { TakesInOn.IsEmpty: false }
        from sent in context.SentOn(day => lab.TakenInOn(day) != day)
        let first = sent.First()
        select Check.At(
            first.Roll,
            first.Sent.Place,
            Sentence.Of(
                "lab/closed-that-day.message",
                ("rolls", Context.And(sent.Select(s => s.Roll.Name.Value))),
                ("sent", Context.Day(sent.Key)),
                ("taken", Context.Day(lab.TakenInOn(sent.Key)))
            )
        ) with
        {
            Others = [new Related(lab.TakesInOn[0].Place, Sentence.Of("lab/closed-that-day.other"))],
            Advice = Sentence.Of("lab/closed-that-day.help"),
        };
}
