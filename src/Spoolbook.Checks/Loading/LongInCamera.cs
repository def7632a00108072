using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Loading;

static class LongInCamera
{
    const int MostOfAYear = 300;

    public static readonly RecordCheck Check = new("load/long-in-camera", Level.Warning, Look);

    static IEnumerable<Finding> Look(Context context) =>
        from roll in context.Production.Rolls
        where !roll.IsPractice
        from stay in context.WalkOf(roll).Stays
        let days = stay.To is { } taken ? DateOnly.FromDateTime(taken).DayNumber - DateOnly.FromDateTime(stay.From).DayNumber : 0
        where days > context.Of(Tolerances.DaysInCamera)
        select Check.At(
            roll,
            stay.Out ?? stay.In,
            Sentence.Of("load/long-in-camera.message", ("roll", roll.Name.Value), ("body", stay.Body), ("days", Context.Count(days, "day")))
        ) with
        {
            Others = stay.Out is null ? [] : [new Related(stay.In, Sentence.Of("load/long-in-camera.other"))],
            Figures =
            [
                new(
                    Sentence.Of("load/long-in-camera.figure.at-most"),
                    Sentence.Of("stock/too-warm.value.days", ("days", Context.Number(context.Of(Tolerances.DaysInCamera))))
                ),
            ],
            Advice = Sentence.Of(days > MostOfAYear ? "load/long-in-camera.help.year" : "load/long-in-camera.help"),
        };
}
