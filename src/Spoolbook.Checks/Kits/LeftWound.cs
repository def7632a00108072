using Spoolbook.Checks.Running;
using Spoolbook.Shoot;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Kits;

static class LeftWound
{
    public static readonly BookCheck Check = new("kit/left-wound", Level.Warning, Look);

    static IEnumerable<Finding> Look(Context context, Books books) =>
        from body in context.Production.Bodies
        where body.FullWind is not null
        let finding = body.Spring is { } spring ? OfSaid(body, spring) : OfLog(context, books.Shoot, body)
        where finding is not null
        select finding with
        {
            Piece = body.Name.Value,
        };

    static Finding? OfSaid(Body body, Located<SpringLeft> spring) =>
        spring.Value == SpringLeft.RunDown
            ? null
            : Check.At(spring.Place, Sentence.Of("kit/left-wound.message.said", ("body", body.Name.Value))) with
            {
                Advice = Sentence.Of("kit/left-wound.help.said"),
            };

    // Only a camera that went back was put away, and only the log knows its last winding.
    static Finding? OfLog(Context context, ShootBook book, Body body)
    {
        if (body.Returned.Back is not { Value: > 0 } back || LastIn(book, body) is not { } last || last.Walk.End.WoundAt is not { } wind)
        {
            return null;
        }

        var driven = last.Walk.End.Driven;
        var left = last.Walk.End.LeftOnSpring(body.FullWind!.Value);
        return left <= context.Of(Tolerances.SpringSlack)
            ? null
            : Check.At(
                back.Place,
                Sentence.Of("kit/left-wound.message.by-the-log", ("body", body.Name.Value), ("left", context.Write(left)))
            ) with
            {
                Level = Level.Note,
                Others = [new(wind, Sentence.Of("kit/left-wound.other.last-wound-here"))],
                Figures =
                [
                    new(Sentence.Of("kit/left-wound.figure.full-wind"), context.Write(body.FullWind.Value)),
                    new(Sentence.Of("kit/left-wound.figure.driven-since"), context.Write(driven)),
                    new(Sentence.Of("kit/left-wound.figure.left-on-it"), context.Write(left)),
                ],
                Advice = Sentence.Of("kit/left-wound.help.by-the-log"),
            };
    }

    // The last one taken out.
    static RollBook? LastIn(ShootBook book, Body body) =>
        book.Rolls.Where(r => r.Roll.Unload is not null && r.Walk.End.Body == body.Name.Value).MaxBy(r => r.Roll.Unload!.On.Value);
}
