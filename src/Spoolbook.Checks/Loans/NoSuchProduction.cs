using Spoolbook.Shoot.Departments;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Loans;

static class NoSuchProduction
{
    public static readonly DepartmentCheck Check = new("loan/no-such-production", Level.Warning, Look);

    static IEnumerable<Finding> Look(DepartmentBook book) =>
        from loan in book.Department.Loans
        where book.Named(loan.To.Value) is null
        select Check.At(
            loan.To.Place,
            Sentence.Of("loan/no-such-production.message", ("piece", loan.Piece.Value), ("to", loan.To.Value))
        ) with
        {
            Piece = loan.Piece.Value,
            Advice = Likeness.Nearest(loan.To.Value, book.Shares.SelectMany(s => (string[])[s.Name, s.Code])) is { } near
                ? Sentence.Of("common.did-you-mean", ("near", near))
                : Sentence.Of("loan/no-such-production.help"),
        };
}
