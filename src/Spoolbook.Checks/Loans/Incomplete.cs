using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Departments;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Loans;

static class Incomplete
{
    public static readonly DepartmentCheck Check = new("loan/incomplete", Level.Warning, Look);

    static IEnumerable<Finding> Look(DepartmentBook book) =>
        from loan in book.Department.Loans
        where !loan.Missing.IsEmpty
        select Check.At(
            loan.Missing[0].Place,
            Sentence.Of(
                "loan/incomplete.message",
                ("piece", loan.Piece.Value),
                ("to", loan.To.Value),
                ("missing", Context.And(loan.Missing.Select(m => m.Value)))
            )
        ) with
        {
            Piece = loan.Piece.Value,
            Advice = Sentence.Of("loan/incomplete.help"),
        };
}
