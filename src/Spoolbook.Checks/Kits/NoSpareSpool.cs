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
        Check.At(
            roll,
            roll.Load.Place,
            $"Roll {roll.Name.Value} was loaded, and by the kit list no empty take-up spool was left for it"
        ) with
        {
            Others = [new(spools.Items[0].Name.Place, "the spools")],
            Figures = [new("empty spools in the kit", Context.Number(spools.InKit))],
            Help =
                "A roll that was run out leaves its own spool, empty; one that was cut keeps it: see whether `short-end:` is right on "
                    + "the rolls before. If another spool turned up, add it to `out:`, since it has to go back too.",
        };

    // Matters only while the kit is out and there is film to load.
    static bool IsNoneForTheNext(Books books) =>
        books.Spools is { Items.IsEmpty: false, ForTheNext: <= 0 } spools
        && spools.Items.All(i => i.Returned.Back is null)
        && books.Stock.OnHand > Footage.Zero;

    static Finding NoneForTheNext(Context context, Books books) =>
        Check.At(books.Spools.Items[0].Name.Place, "No empty take-up spool is left for the next roll") with
        {
            Piece = books.Spools.Items[0].Name.Value,
            Figures =
            [
                new("empty spools in the kit", Context.Number(books.Spools.InKit)),
                new("gone with exposed film", Context.Number(books.Spools.Gone)),
                new("film to load", context.Write(books.Stock.OnHand)),
            ],
            Help =
                "Get one before the next load: ask the lab or whoever lent the kit. A short end keeps its spool; run it off or load it, "
                    + "and its spool is free.",
        };
}
