using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Departments;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Shelves;

static class InTwoProductions
{
    public static readonly DepartmentCheck Check = new("shelf/in-two-productions", Level.Error, Look);

    static IEnumerable<Finding> Look(DepartmentBook book) =>
        from hand in book.Disagreements
        where !hand.IsOneSided
        select Check.At(
            hand.Unit.Place,
            Sentence.Of(
                "shelf/in-two-productions.message",
                ("unit", Context.Number(hand.Unit.Unit)),
                ("lot", hand.Unit.Lot),
                ("production", hand.Unit.Production),
                ("other", hand.Party)
            )
        ) with
        {
            Lot = hand.Unit.Lot,
            Others = hand.Other is { } other
                ? [new Related(other.Place, Sentence.Of("shelf/in-two-productions.other", ("other", hand.Party)))]
                : [],
            Advice = Sentence.Of("shelf/in-two-productions.help", ("other", hand.Party)),
        };
}
