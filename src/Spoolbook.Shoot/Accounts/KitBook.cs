using System.Collections.Immutable;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Accounts;

/// <summary>The kit as it went out and as it came back, counted once for every paper.</summary>
public sealed record KitBook(ImmutableArray<KitPiece> Pieces, Loan? Loan)
{
    /// <summary>How many pieces went out, all together.</summary>
    public int Out => Pieces.Sum(p => p.Returned.Out);

    /// <summary>How many came back, of the pieces with a return written down.</summary>
    public int Back => Pieces.Sum(p => p.Returned.Back?.Value ?? 0);

    /// <summary>Whether the return of a piece is not written down yet.</summary>
    public bool IsOut => Pieces.Any(p => p.Returned.Back is null);

    /// <summary>The value of what went out, as far as it was written; null where no value was.</summary>
    public decimal? Value =>
        Pieces.Any(p => p.Returned.Value is not null) ? Pieces.Sum(p => p.Returned.Out * (p.Returned.Value?.Value ?? 0)) : null;

    /// <summary>How many of the pieces that went out have no value written.</summary>
    public int WithoutValue => Pieces.Where(p => p.Returned.Value is null).Sum(p => p.Returned.Out);

    /// <summary>The kit of a shoot.</summary>
    internal static KitBook Keep(ShootBook book) =>
        new(
            [
                .. PiecesOf(book.Production)
                    .Select(p => p.Kind == KitKind.Body ? p with { FilmIn = FilmIn(book, p.Name.Value) } : p)
                    .Select(p => p with { SchoolLoan = LoanOf(book.Production, p.Name.Value) }),
            ],
            book.Production.Loan
        );

    /// <summary>Everything that must go back, in the order of the list.</summary>
    public static IEnumerable<KitPiece> PiecesOf(Production production) =>
        [
            .. production.Bodies.Select(b => new KitPiece(KitKind.Body, b.Name, b.What, b.Serial, b.Returned)
            {
                HasSpring = b.FullWind is not null || b.Spring is not null,
                SpringLeft = b.Spring?.Value,
                Turret = [.. b.Turret.Select(l => l.Value)],
                Sprockets = b.Sprockets?.Value,
            }),
            .. production.Lenses.Select(l => new KitPiece(KitKind.Lens, l.Name, l.What, l.Serial, l.Returned)
            {
                MadeFor = l.MadeFor?.Value,
            }),
            .. production.Filters.Select(f => new KitPiece(KitKind.Filter, f.Name, f.What, f.Serial, f.Returned)),
            .. production.Meters.Select(m => new KitPiece(KitKind.Meter, m.Name, m.What, m.Serial, m.Returned)),
            .. production.Motors.Select(m => new KitPiece(KitKind.Motor, m.Name, m.What, m.Serial, m.Returned)),
            .. production.Items.Select(i => new KitPiece(KitKind.Item, i.Name, null, i.Serial, i.Returned)
            {
                TakeUp = i.TakeUp?.Value == true,
            }),
        ];

    // A piece may go out again: the last loan of it is the one that it is on.
    static KitLoan? LoanOf(Production production, string piece) =>
        production.SchoolLoans.Where(l => l.Piece.Value == piece).MaxBy(l => l.Out.Value);

    // The last one threaded, unless it was unloaded: a body holds one roll, and one that was out for a while comes back.
    static Roll? FilmIn(ShootBook book, string body) =>
        book.Rolls.Where(r => r.Walk.End.Body == body).MaxBy(r => r.Walk.Stays.Last().From)?.Roll is { Unload: null } roll ? roll : null;
}
