using Spoolbook.Checks.Running;
using Spoolbook.Shoot;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Stocks;

static class LogImpossible
{
    public static readonly BookCheck Check = new("stock/log-impossible", Level.Error, Look);

    static IEnumerable<Finding> Look(Context context, Books books) => Moved(books).Concat(NeverThere(books));

    static IEnumerable<Finding> NeverThere(Books books) =>
        from stranger in books.Stock.Strangers
        select Report(
            stranger.Entry,
            stranger.Lot,
            stranger.Unit is { } unit
                ? Sentence.Of("stock/log-impossible.value.unit", ("unit", Context.Number(unit)), ("lot", stranger.Lot.Name.Value))
                : Sentence.Of(
                    "stock/log-impossible.value.short-end",
                    ("name", StockShortEnd.NameOf(stranger.Parent!.Name.Value, stranger.Piece))
                ),
            stranger.Unit is null
                ? Sentence.Of("stock/log-impossible.value.no-such-piece")
                : Sentence.Of("stock/log-impossible.value.no-such-unit")
        );

    static IEnumerable<Finding> Moved(Books books) =>
        from move in books.Stock.Moves
        let why = Why(move)
        where why is not null
        select Report(move.Entry, move.Lot, Name(move), why);

    static Finding Report(StockEntry entry, StockLot lot, Sentence can, Sentence why) =>
        Check.At(
            entry.Place,
            Sentence.Of(
                "stock/log-impossible.message",
                ("can", can),
                ("happened", Happened(entry)),
                ("day", Context.Day(entry.On.Value.Day)),
                ("why", why)
            )
        ) with
        {
            Lot = lot.Name.Value,
            Advice = Sentence.Of("stock/log-impossible.help"),
        };

    /// <summary>A can, at the start of a sentence.</summary>
    static Sentence Name(StockMove move) =>
        move.ShortEndOf is { } parent
            ? Sentence.Of(
                "stock/log-impossible.value.short-end",
                ("name", StockShortEnd.NameOf(parent.Name.Value, move.Entry.Piece?.Value))
            )
            : Sentence.Of("stock/log-impossible.value.unit", ("unit", Context.Number(move.Unit ?? 0)), ("lot", move.Lot.Name.Value));

    /// <summary>What an entry says happened, after "have".</summary>
    public static Sentence Happened(StockEntry entry) =>
        entry switch
        {
            StockCame => Sentence.Of("stock/log-impossible.value.came"),
            StockSentAway => Sentence.Of("stock/log-impossible.value.sent-away"),
            StockLost => Sentence.Of("stock/log-impossible.value.lost"),
            StockDamaged => Sentence.Of("stock/log-impossible.value.damaged"),
            StockSplit => Sentence.Of("stock/log-impossible.value.split"),
            StockOutOfCold => Sentence.Of("stock/log-impossible.value.out-of-cold"),
            StockIntoCold => Sentence.Of("stock/log-impossible.value.into-cold"),
            StockXRayed => Sentence.Of("stock/log-impossible.value.x-rayed"),
            _ => Sentence.Of("stock/log-impossible.value.canned"),
        };

    static Sentence? Why(StockMove move) =>
        move.Fault switch
        {
            StockFault.NeverHere when move.ShortEndOf is null => Sentence.Of("stock/log-impossible.value.no-such-unit"),
            StockFault.NeverHere => Sentence.Of("stock/log-impossible.value.none-left"),
            StockFault.HereAlready => Sentence.Of("stock/log-impossible.value.here-already"),
            StockFault.Loaded => Sentence.Of("stock/log-impossible.value.was-loaded"),
            StockFault.SentAway => Sentence.Of("stock/log-impossible.value.was-sent-away"),
            StockFault.Lost => Sentence.Of("stock/log-impossible.value.was-lost"),
            StockFault.Damaged => Sentence.Of("stock/log-impossible.value.was-damaged"),
            StockFault.SplitAlready => Sentence.Of("stock/log-impossible.value.was-split"),
            StockFault.MoreThanInIt when move.Entry is StockSplit => Sentence.Of("stock/log-impossible.value.more-than-in-pieces"),
            StockFault.MoreThanInIt => Sentence.Of("stock/log-impossible.value.more-than-in-it"),
            _ => null,
        };
}
