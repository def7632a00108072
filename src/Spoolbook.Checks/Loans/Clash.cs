using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Departments;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Loans;

static class Clash
{
    public static readonly DepartmentCheck Check = new("loan/clash", Level.Error, Look);

    static IEnumerable<Finding> Look(DepartmentBook book) =>
        from piece in book.Department.Loans.GroupBy(l => l.Piece.Value, StringComparer.Ordinal)
        let loans = piece.OrderBy(l => l.Out.Value).ToArray()
        from at in Enumerable.Range(1, Math.Max(0, loans.Length - 1))
        let before = loans.Take(at).FirstOrDefault(l => l.Overlaps(loans[at]) && l.To.Value != loans[at].To.Value)
        where before is not null
        let loan = loans[at]
        select Check.At(
            loan.Piece.Place,
            Sentence.Of(
                "loan/clash.message",
                ("piece", loan.Piece.Value),
                ("to", loan.To.Value),
                ("out", Context.Day(loan.Out.Value)),
                ("other", before.To.Value),
                ("back", Context.Day(before.End))
            )
        ) with
        {
            Piece = loan.Piece.Value,
            Others = [new Related(before.Piece.Place, Sentence.Of("loan/clash.other", ("other", before.To.Value)))],
            Advice = Sentence.Of("loan/clash.help"),
        };
}
