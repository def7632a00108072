using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;

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
        let name = LogImpossible.Name(move)
        select Check.At(roll, roll.Load.On.Place, move.Fault == StockFault.LoadedBefore
            ? $"Roll {roll.Name.Value} was loaded before its film came: {char.ToLowerInvariant(name[0])}{name[1..]}"
            : $"Roll {roll.Name.Value} is of a can that was not there: {char.ToLowerInvariant(name[0])}{name[1..]} had {LogImpossible.Happened(move.Entry)}") with
        {
            Others = [new(move.Entry.Place, "says the stock log")],
            Help = move.Fault == StockFault.LoadedBefore
                ? "Correct the day on which it came, or the unit of the roll."
                : "Read the number off the can: either the roll is of another unit, or another can went. If it came back in between, add `- came:`. Until then the roll is believed and the log is not.",
        };
}
