using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Stocks;

static class LogImpossible
{
    public static readonly BookCheck Check = new("stock/log-impossible", Level.Error, Look);

    static IEnumerable<Finding> Look(Context context, Books books) =>
        from move in books.Stock.Moves
        let why = Why(move)
        where why is not null
        select Check.At(move.Entry.Place, $"{Name(move)} cannot have {Happened(move.Entry)} on {move.Entry.On.Value.Day:yyyy-MM-dd}: {why}") with
        {
            Lot = move.Lot.Name.Value,
            Help = "Compare the log with the cans and with the rolls' files, and correct the number or the time; where two things happened on one day, write the time of both. The entry is not counted.",
        };

    /// <summary>A can as a sentence begins with it.</summary>
    public static string Name(StockMove move) => move.ShortEndOf is { } parent
        ? $"The short end of roll {parent.Name.Value}"
        : $"Unit {Context.Number(move.Unit ?? 0)} of lot {move.Lot.Name.Value}";

    /// <summary>What an entry says happened, after "have".</summary>
    public static string Happened(StockEntry entry) => entry switch
    {
        StockCame => "come",
        StockSentAway => "been sent away",
        StockLost => "been lost",
        StockDamaged => "been damaged",
        _ => "been canned again",
    };

    static string? Why(StockMove move) => move.Fault switch
    {
        StockFault.NeverHere when move.ShortEndOf is null => "no unit of that number had come",
        StockFault.NeverHere => "the roll had left none by then",
        StockFault.HereAlready => "it was here already",
        StockFault.Loaded => "it had been loaded by then",
        StockFault.SentAway => "it had been sent away",
        StockFault.Lost => "it had been lost",
        StockFault.Damaged => "it had been damaged beyond use",
        StockFault.MoreThanInIt => "more would have been thrown away than was in it",
        _ => null,
    };
}
