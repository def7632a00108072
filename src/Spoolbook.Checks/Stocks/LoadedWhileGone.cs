using Spoolbook.Checks.Running;
using Spoolbook.Shoot;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Stocks;

static class LoadedWhileGone
{
    public static readonly BookCheck Check = new("stock/loaded-while-gone", Level.Error, Look);

    static IEnumerable<Finding> Look(Context context, Books books) =>
        from can in books.Stock.Cans
        let roll = can.Load?.Roll
        where roll is not null
        from move in can.Moves
        where move.Fault is StockFault.LoadedAfterwards or StockFault.LoadedBefore
        let film = Within(move)
        select Check.At(
            roll,
            roll.Load.On.Place,
            move.Fault == StockFault.LoadedBefore
                ? Sentence.Of("stock/loaded-while-gone.message.before", ("roll", roll.Name.Value), ("can", film))
                : Sentence.Of(
                    "stock/loaded-while-gone.message.gone",
                    ("roll", roll.Name.Value),
                    ("can", film),
                    ("happened", LogImpossible.Happened(move.Entry))
                )
        ) with
        {
            Others = [new(move.Entry.Place, Sentence.Of("stock/loaded-while-gone.other.says-the-stock-log"))],
            Advice =
                move.Fault == StockFault.LoadedBefore
                    ? Sentence.Of("stock/loaded-while-gone.help.before")
                    : Sentence.Of("stock/loaded-while-gone.help.gone"),
        };

    // A can, in the middle of a sentence.
    static Sentence Within(StockMove move) =>
        move.ShortEndOf is { } parent
            ? Sentence.Of(
                "stock/loaded-while-gone.value.short-end",
                ("name", StockShortEnd.NameOf(parent.Name.Value, move.Entry.Piece?.Value))
            )
            : Sentence.Of("stock/loaded-while-gone.value.unit", ("unit", move.Unit ?? 0), ("lot", move.Lot.Name.Value));
}
