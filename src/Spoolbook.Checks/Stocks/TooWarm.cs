using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Stocks;

static class TooWarm
{
    public static readonly RecordCheck Check = new("stock/too-warm", Level.Warning, Look);

    // Once for what was taken out together, at the roll that waited longest.
    static IEnumerable<Finding> Look(Context context) =>
        from roll in context.Production.Rolls
        where !roll.IsPractice
        let taken = StockTouch.Of(context.Production, roll).Where(e => e is StockOutOfCold or StockIntoCold && e.At <= roll.Load.On.Value).MaxBy(e => e.At) as StockOutOfCold
        where taken is not null
        group roll by taken.Place into together
        let longest = together.MaxBy(r => r.Load.On.Value)!
        let taken = context.Production.StockLog.First(e => e.Place == together.Key)
        let days = DateOnly.FromDateTime(longest.Load.On.Value).DayNumber - taken.On.Value.Day.DayNumber
        where days > context.Of(Tolerances.DaysInWarm)
        select Check.At(longest, longest.Load.On.Place, $"Roll {longest.Name.Value} was loaded {Context.Number(days)} days after its stock was taken out of the cold") with
        {
            Others = [new(taken.Place, "taken out here")],
            Figures = [new("out of the cold for", $"{Context.Number(days)} days"), new("at most", $"{Context.Number(context.Of(Tolerances.DaysInWarm))} days")],
            Help = "Warm stock loses speed and gathers fog: have a few feet of it tested before you trust it, and tell the lab. If it went back into the cold in between, add `- into-cold:` and `- out-of-cold:` with their days.",
        };
}
