using Spoolbook.Checks.Running;
using Spoolbook.Film;
using Spoolbook.Film.Lenses;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Focusing;

static class OutsideDepth
{
    public static readonly RecordCheck Check = new("focus/outside-depth", Level.Warning, Look);

    static IEnumerable<Finding> Look(Context context) =>
        from roll in context.Production.Rolls
        from take in roll.Takes
        where take.Mark.Value != Mark.Test && take.Measured.Length > 0
        let depth = Depth.Of(context, take)
        where depth is not null
        let blurred = take.Measured.FirstOrDefault(m => IsOutside(context, m.Value, depth.Value))
        where blurred is not null
        select Check.At(
            roll,
            take,
            take.Focus!.Place,
            Sentence.Of(
                "focus/outside-depth.message",
                ("take", take.Slate),
                ("focus", context.Write(take.Focus.Value)),
                ("blurred", context.Write(blurred.Value)),
                ("stop", take.Stop!.Value.ToString()),
                ("lens", take.Lens!.Value),
                ("near", context.Write(depth.Value.Near)),
                ("far", context.Write(depth.Value.Far))
            )
        ) with
        {
            Others = [new(blurred.Place, Sentence.Of("focus/outside-depth.other.where-the-subject-stood"))],
            Figures =
            [
                new(Sentence.Of("focus/outside-depth.figure.focus"), context.Write(take.Focus.Value)),
                new(Sentence.Of("focus/outside-depth.figure.by-the-tape"), context.Write(blurred.Value)),
                new(Sentence.Of("focus/outside-depth.figure.sharp-from"), context.Write(depth.Value.Near)),
                new(Sentence.Of("focus/outside-depth.figure.to"), context.Write(depth.Value.Far)),
            ],
            Advice = Sentence.Of("focus/outside-depth.help"),
        };

    static bool IsOutside(Context context, Distance subject, DepthOfField depth)
    {
        var at = Depth.Millimetres(subject);
        var slack = context.Of(Tolerances.TapeSlack).ToDouble();
        return at < depth.Near * (1 - slack) || at > depth.Far * (1 + slack);
    }
}
