using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Departments;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Loans;

static class BackOnHoliday
{
    public static readonly DepartmentCheck Check = new("loan/back-on-holiday", Level.Note, Look);

    static IEnumerable<Finding> Look(DepartmentBook book) =>
        from loan in book.Department.Loans
        where loan.CameBack is null
        let holiday = book.Department.Holidays.FirstOrDefault(h => h.Value == loan.Back.Value)
        where holiday is not null
        select Check.At(
            loan.Back.Place,
            Sentence.Of(
                "loan/back-on-holiday.message",
                ("piece", loan.Piece.Value),
                ("to", loan.To.Value),
                ("day", Context.Day(loan.Back.Value))
            )
        ) with
        {
            Piece = loan.Piece.Value,
            Others = [new Related(holiday.Place, Sentence.Of("loan/back-on-holiday.other"))],
            Advice = Sentence.Of("loan/back-on-holiday.help"),
        };
}
