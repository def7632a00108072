using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Lengths;

static class OverTheBody
{
    public static readonly RollCheck Check = new("length/over-the-body", Level.Error, Round.Positions, Look);

    static IEnumerable<Finding> Look(Context context, RollBook book) =>
        from takes in new[] { context.Production.BodyNamed(book.Walk.Loading.After.Body)?.Takes }
        where takes is not null && book.Strip.Loaded > takes.Value + context.Of(Tolerances.ShortEndSlack)
        let roll = book.Roll
        select Check.At(
            roll,
            roll.Length?.Place ?? roll.Name.Place,
            Sentence.Of(
                "length/over-the-body.message",
                ("roll", roll.Name.Value),
                ("loaded", context.Write(book.Strip.Loaded)),
                ("body", book.Walk.Loading.After.Body!),
                ("takes", context.Write(takes.Value))
            )
        ) with
        {
            Others =
            [
                new Related(takes.Place, Sentence.Of("length/over-the-body.other.body")),
                .. context.Production.LotOf(roll) is { } lot
                    ? [new Related(lot.Length.Place, Sentence.Of("length/over-the-body.other.lot"))]
                    : (Related[])[],
            ],
            Advice = Sentence.Of("length/over-the-body.help"),
        };
}
