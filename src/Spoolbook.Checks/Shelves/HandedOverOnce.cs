using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Departments;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Shelves;

static class HandedOverOnce
{
    public static readonly DepartmentCheck Check = new("shelf/handed-over-once", Level.Warning, Look);

    static IEnumerable<Finding> Look(DepartmentBook book) =>
        from hand in book.Disagreements
        where hand.IsOneSided
        let went = hand.Unit.Kind == UnitEventKind.Went
        select Check.At(
            hand.Unit.Place,
            Sentence.Of(
                went ? "shelf/handed-over-once.message.went" : "shelf/handed-over-once.message.came",
                ("unit", Context.Number(hand.Unit.Unit)),
                ("lot", hand.Unit.Lot),
                ("production", hand.Unit.Production),
                ("other", hand.Unit.Other ?? hand.Party)
            )
        ) with
        {
            Lot = hand.Unit.Lot,
            Others = hand.Other is { } other
                ? [new Related(other.Place, Sentence.Of("shelf/handed-over-once.other", ("party", hand.Party)))]
                : [],
            Advice = Sentence.Of(
                went ? "shelf/handed-over-once.help.went" : "shelf/handed-over-once.help.came",
                ("lot", hand.Unit.Lot),
                ("unit", Context.Number(hand.Unit.Unit)),
                ("production", hand.Unit.Production),
                ("other", hand.Unit.Other ?? hand.Party)
            ),
        };
}
