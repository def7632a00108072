using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Stocks;

static class TooWarm
{
    public static readonly RecordCheck Check = new("stock/too-warm", Level.Warning, Look);

    // Once for all that was taken out together, at the roll that waited longest.
    static IEnumerable<Finding> Look(Context context) =>
        from roll in context.Production.Rolls
        where !roll.IsPractice
        let taken = StockTouch
            .Of(context.Production, roll)
            .Where(e => e is StockOutOfCold or StockIntoCold && e.At <= roll.Load.On.Value)
            .MaxBy(e => e.At) as StockOutOfCold
        where taken is not null
        group roll by taken.Place into together
        let longest = together.MaxBy(r => r.Load.On.Value)!
        let taken = context.Production.StockLog.First(e => e.Place == together.Key)
        let days = DateOnly.FromDateTime(longest.Load.On.Value).DayNumber - taken.On.Value.Day.DayNumber
        where days > context.Of(Tolerances.DaysInWarm)
        select Check.At(
            longest,
            longest.Load.On.Place,
            Sentence.Of("stock/too-warm.message", ("longest", longest.Name.Value), ("days", Context.Number(days)))
        ) with
        {
            Others = [new(taken.Place, Sentence.Of("stock/too-warm.other.taken-out-here"))],
            Figures =
            [
                new(
                    Sentence.Of("stock/too-warm.figure.out-of-the-cold-for"),
                    Sentence.Of("stock/too-warm.value.days", ("days", Context.Number(days)))
                ),
                new(
                    Sentence.Of("stock/too-warm.figure.at-most"),
                    Sentence.Of("stock/too-warm.value.days", ("days", Context.Number(context.Of(Tolerances.DaysInWarm))))
                ),
            ],
            Advice = Sentence.Of("stock/too-warm.help"),
        };
}
