using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Kits;

static class NoBody
{
    public static readonly RecordCheck Check = new("kit/no-body", Level.Note, Look);

    static IEnumerable<Finding> Look(Context context) =>
        from roll in context.Production.Rolls
        where !context.Production.Bodies.IsEmpty && (roll.Body is null || roll.BodyIsTaken)
        select Check.At(
            roll,
            roll.Name.Place,
            Sentence.Of(
                roll.Body is null ? "kit/no-body.message.several" : "kit/no-body.message.one",
                ("roll", roll.Name.Value),
                ("body", roll.Body?.Value ?? "")
            )
        ) with
        {
            Others = [new Related(context.Production.Bodies[0].Name.Place, Sentence.Of("kit/no-body.other"))],
            Advice = Sentence.Of(
                "kit/no-body.help",
                (
                    "body",
                    roll.Body is { } taken ? Sentence.Plain(taken.Value) : Context.Or(context.Production.Bodies.Select(b => b.Name.Value))
                )
            ),
        };
}
