using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Checks.Kits;

static class NotReturned
{
    public static readonly RecordCheck Check = new("kit/not-returned", Level.Warning, Look);

    static IEnumerable<Finding> Look(Context context) =>
        from piece in KitBook.PiecesOf(context.Production)
        where piece.Returned.Missing > 0
        select Check.At(piece.Returned.Back!.Place, $"{piece.Name.Value}: {Context.Number(piece.Returned.Out)} went out and {Context.Number(piece.Returned.Back.Value)} came back") with
        {
            Piece = piece.Name.Value,
            Figures =
            [
                new Figure("out", Context.Number(piece.Returned.Out)),
                new Figure("back", Context.Number(piece.Returned.Back.Value)),
                new Figure("missing", Context.Number(piece.Returned.Missing!.Value)),
            ],
            Help = "Look once more in the bags and at the last location; then tell whoever lent the kit, before they count it.",
        };
}
