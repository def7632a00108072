using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Kits;

static class MoreCameBack
{
    public static readonly RecordCheck Check = new("kit/more-came-back", Level.Warning, Look);

    static IEnumerable<Finding> Look(Context context) =>
        from piece in KitBook.PiecesOf(context.Production)
        where piece.Returned.Missing < 0
        select Check.At(
            piece.Returned.Back!.Place,
            Sentence.Of(
                "kit/more-came-back.message",
                ("piece", piece.Name.Value),
                ("out", Context.Number(piece.Returned.Out)),
                ("back", Context.Number(piece.Returned.Back.Value))
            )
        ) with
        {
            Piece = piece.Name.Value,
            Advice = Sentence.Of("kit/more-came-back.help"),
        };
}
