using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Kits;

static class NotReturned
{
    public static readonly RecordCheck Check = new("kit/not-returned", Level.Warning, Look);

    static IEnumerable<Finding> Look(Context context) =>
        from piece in Pieces(context.Production)
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

    static IEnumerable<(Located<string> Name, Returned Returned)> Pieces(Production production) =>
    [
        .. production.Bodies.Select(b => (b.Name, b.Returned)),
        .. production.Lenses.Select(l => (l.Name, l.Returned)),
        .. production.Filters.Select(f => (f.Name, f.Returned)),
        .. production.Meters.Select(m => (m.Name, m.Returned)),
        .. production.Motors.Select(m => (m.Name, m.Returned)),
        .. production.Items.Select(i => (i.Name, i.Returned)),
    ];
}
