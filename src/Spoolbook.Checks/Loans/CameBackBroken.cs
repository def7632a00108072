using Spoolbook.Shoot.Departments;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Loans;

static class CameBackBroken
{
    public static readonly DepartmentCheck Check = new("loan/came-back-broken", Level.Warning, Look);

    // A later loan shows that it was repaired.
    static IEnumerable<Finding> Look(DepartmentBook book) =>
        from loan in book.Department.Loans
        where loan.Condition is { Value: KitCondition.Broken }
        where !book.Department.Loans.Any(l => l.Piece.Value == loan.Piece.Value && l.Out.Value > loan.End)
        select Check.At(
            loan.Condition!.Place,
            Sentence.Of("loan/came-back-broken.message", ("piece", loan.Piece.Value), ("to", loan.To.Value))
        ) with
        {
            Piece = loan.Piece.Value,
            Advice = Sentence.Of("loan/came-back-broken.help"),
        };
}
