using Spoolbook.Checks.Running;
using Spoolbook.Film;
using Spoolbook.Shoot;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Kits;

static class NoSpareSpool
{
    public static readonly BookCheck Check = new("kit/no-spare-spool", Level.Warning, Look);

    // Once: after the first missing spool, every roll lacks one.
    static IEnumerable<Finding> Look(Context context, Books books)
    {
        var spools = books.Spools;
        return spools.FirstWithout is { } roll ? [Missing(spools, roll)]
            : IsNoneForTheNext(books) ? [NoneForTheNext(context, books)]
            : [];
    }

    static Finding Missing(SpoolBook spools, Roll roll) =>
        Check.At(roll, roll.Load.Place, Sentence.Of("kit/no-spare-spool.message", ("roll", roll.Name.Value))) with
        {
            Others = [new(spools.Items[0].Name.Place, Sentence.Of("kit/no-spare-spool.other.the-spools"))],
            Figures = [new(Sentence.Of("kit/no-spare-spool.figure.in-the-kit"), Context.Number(spools.InKit))],
            Advice = Sentence.Of("kit/no-spare-spool.help"),
        };

    // Matters only while the kit is out and there is film to load.
    static bool IsNoneForTheNext(Books books) =>
        books.Spools is { Items.IsEmpty: false, ForTheNext: <= 0 } spools
        && spools.Items.All(i => i.Returned.Back is null)
        && books.Stock.OnHand > Footage.Zero;

    static Finding NoneForTheNext(Context context, Books books) =>
        Check.At(books.Spools.Items[0].Name.Place, Sentence.Of("kit/no-spare-spool.message.next-roll")) with
        {
            Piece = books.Spools.Items[0].Name.Value,
            Figures =
            [
                new(Sentence.Of("kit/no-spare-spool.figure.in-the-kit"), Context.Number(books.Spools.InKit)),
                new(Sentence.Of("kit/no-spare-spool.figure.gone"), Context.Number(books.Spools.Gone)),
                new(Sentence.Of("kit/no-spare-spool.figure.film-to-load"), context.Write(books.Stock.OnHand)),
            ],
            Advice = Sentence.Of("kit/no-spare-spool.help.next-roll"),
        };
}
