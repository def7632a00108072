using Spoolbook.Shoot.Departments;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Loans;

static class NoSuchPiece
{
    public static readonly DepartmentCheck Check = new("loan/no-such-piece", Level.Error, Look);

    static IEnumerable<Finding> Look(DepartmentBook book)
    {
        var names = book.Department.PieceNames.Select(n => n.Value).ToHashSet(StringComparer.Ordinal);
        return from loan in book.Department.Loans
               where !names.Contains(loan.Piece.Value)
               select Check.At(loan.Piece.Place, Sentence.Of("loan/no-such-piece.message", ("piece", loan.Piece.Value))) with
               {
                   Advice = Likeness.Nearest(loan.Piece.Value, names) is { } near
                       ? Sentence.Of("common.did-you-mean", ("near", near))
                       : Sentence.Of("loan/no-such-piece.help"),
               };
    }
}
