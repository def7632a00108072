using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Kits;

static class NoSpareSpool
{
    public static readonly BookCheck Check = new("kit/no-spare-spool", Level.Warning, Look);

    // Once: from the first spool that is missing on, every roll lacks one.
    static IEnumerable<Finding> Look(Context context, ShootBook book)
    {
        var items = context.Production.Items.Where(i => i.TakeUp?.Value == true).ToArray();
        return items.Length == 0 ? [] : new[] { Missing(book, items) ?? NoneForTheNext(context, book, items) }.OfType<Finding>();
    }

    static Finding? Missing(ShootBook book, KitItem[] items)
    {
        var spare = Spools(items);
        foreach (var (_, roll, change) in Events(book))
        {
            spare += change;
            if (spare < 0)
            {
                return Check.At(roll, roll.Load.Place, $"Roll {roll.Name.Value} was loaded, and by the kit list no empty take-up spool was left for it") with
                {
                    Others = [new(items[0].Name.Place, "the spools")],
                    Figures = [new("empty spools in the kit", Context.Number(Spools(items)))],
                    Help = "A roll that was run out leaves its own spool, empty; one that was cut keeps it: see whether `short-end:` is right on the rolls before. If another spool turned up, add it to `out:`, since it has to go back too.",
                };
            }
        }

        return null;
    }

    // While the kit is out and there is film to load.
    static Finding? NoneForTheNext(Context context, ShootBook book, KitItem[] items)
    {
        var spare = Spools(items) + Events(book).Sum(e => e.Change);
        var loaded = book.Rolls.Count(r => TakenOut(book, r) is null);
        var stock = StockBook.Keep(book);
        return spare + loaded > 0 || items.Any(i => i.Returned.Back is not null) || stock.OnHand.Frames == 0 ? null
            : Check.At(items[0].Name.Place, "No empty take-up spool is left for the next roll") with
            {
                Piece = items[0].Name.Value,
                Figures =
                [
                    new("empty spools in the kit", Context.Number(Spools(items))),
                    new("gone with exposed film", Context.Number(book.Rolls.Count(r => TakenOut(book, r) is not null))),
                    new("film to load", context.Write(stock.OnHand)),
                ],
                Help = "Get one before the next load: ask the lab or whoever lent the kit. A short end keeps its spool; run it off or load it, and its spool is free.",
            };
    }

    static int Spools(KitItem[] items) => items.Sum(i => i.Returned.Out);

    // A roll takes a spool when it is loaded; taken out, it goes on that one to the lab and leaves its own,
    // unless film is left on it.
    static IEnumerable<(DateTime On, Roll Roll, int Change)> Events(ShootBook book) =>
        book.Rolls.SelectMany(r => Of(book, r)).OrderBy(e => e.On).ThenByDescending(e => e.Change);

    static IEnumerable<(DateTime On, Roll Roll, int Change)> Of(ShootBook book, RollBook roll)
    {
        yield return (roll.Roll.Load.On.Value, roll.Roll, -1);
        if (TakenOut(book, roll) is { } on && roll.Tally.ShortEnd.Frames == 0)
        {
            yield return (on, roll.Roll, 1);
        }
    }

    // Where nobody wrote it down, the next roll in the same body shows it.
    static DateTime? TakenOut(ShootBook book, RollBook roll) => roll.Roll.Unload?.On.Value ?? book.Rolls
        .Where(r => r.Roll.Body?.Value == roll.Roll.Body?.Value && r.Roll.Load.On.Value > roll.Roll.Load.On.Value)
        .Select(r => (DateTime?)r.Roll.Load.On.Value)
        .Min();
}
