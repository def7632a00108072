using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Departments;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Shelves;

static class NoSuchUnit
{
    public static readonly DepartmentCheck Check = new("shelf/no-such-unit", Level.Error, Look);

    static IEnumerable<Finding> Look(DepartmentBook book) =>
        from shelf in book.Shelf
        from unit in book
            .Shares.SelectMany(s => s.Units)
            .Where(u => u.Lot == shelf.Lot.Name.Value && u.Unit > shelf.Bought)
            .DistinctBy(u => (u.Production, u.Unit))
        select Check.At(
            unit.Place,
            Sentence.Of(
                "shelf/no-such-unit.message",
                ("production", unit.Production),
                ("unit", Context.Number(unit.Unit)),
                ("lot", unit.Lot),
                ("bought", Context.Count(shelf.Bought, "unit"))
            )
        ) with
        {
            Lot = unit.Lot,
            Others = [new Related(shelf.Lot.Units.Place, Sentence.Of("shelf/no-such-unit.other"))],
            Advice = Sentence.Of("shelf/no-such-unit.help"),
        };
}
