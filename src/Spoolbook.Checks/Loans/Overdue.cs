using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Departments;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Loans;

static class Overdue
{
    public static readonly DepartmentCheck Check = new("loan/overdue", Level.Warning, Look);

    static IEnumerable<Finding> Look(DepartmentBook book) =>
        from loan in book.Department.Loans
        where loan.IsOverdue(book.Today)
        select Check.At(
            loan.Back.Place,
            Sentence.Of(
                "loan/overdue.message",
                ("piece", loan.Piece.Value),
                ("to", loan.To.Value),
                ("days", Context.Count(book.Today.DayNumber - loan.Back.Value.DayNumber, "day"))
            )
        ) with
        {
            Piece = loan.Piece.Value,
            Advice = Sentence.Of("loan/overdue.help"),
        };
}
