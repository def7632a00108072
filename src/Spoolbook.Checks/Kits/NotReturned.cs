using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Kits;

static class NotReturned
{
    public static readonly RecordCheck Check = new("kit/not-returned", Level.Warning, Look);

    static IEnumerable<Finding> Look(Context context) =>
        from piece in KitBook.PiecesOf(context.Production)
        where piece.Returned.Missing > 0
        select Check.At(
            piece.Returned.Back!.Place,
            Sentence.Of(
                "kit/not-returned.message",
                ("piece", piece.Name.Value),
                ("out", Context.Number(piece.Returned.Out)),
                ("back", Context.Number(piece.Returned.Back.Value))
            )
        ) with
        {
            Piece = piece.Name.Value,
            Figures =
            [
                new Figure(Sentence.Of("kit/not-returned.figure.out"), Context.Number(piece.Returned.Out)),
                new Figure(Sentence.Of("kit/not-returned.figure.back"), Context.Number(piece.Returned.Back.Value)),
                new Figure(Sentence.Of("kit/not-returned.figure.missing"), Context.Number(piece.Returned.Missing!.Value)),
            ],
            Advice = Sentence.Of("kit/not-returned.help"),
        };
}
