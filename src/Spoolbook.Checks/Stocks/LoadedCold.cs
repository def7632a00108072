using Spoolbook.Checks.Running;
using Spoolbook.Film;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Stocks;

static class LoadedCold
{
    public static readonly RecordCheck Check = new("stock/loaded-cold", Level.Warning, Look);

    static IEnumerable<Finding> Look(Context context) =>
        from roll in context.Production.Rolls
        where !roll.IsPractice
        let last = StockTouch
            .Of(context.Production, roll)
            .Where(e => e is StockOutOfCold or StockIntoCold && e.At <= roll.Load.On.Value)
            .MaxBy(e => e.At)
        let finding = last is null ? null : For(context, roll, last)
        where finding is not null
        select finding;

    static Finding? For(Context context, Roll roll, StockEntry last)
    {
        var load = roll.Load.On;
        if (last is not StockOutOfCold taken)
        {
            return Check.At(roll, load.Place, Sentence.Of("stock/loaded-cold.message.still-cold", ("roll", roll.Name.Value))) with
            {
                Others = [new(last.Place, Sentence.Of("stock/loaded-cold.other.put-into-the-cold-here"))],
                Advice = Sentence.Of("stock/loaded-cold.help.still-cold"),
            };
        }

        var rise = taken.From?.Value == ColdStore.Freezer ? WarmUp.LargeRise : WarmUp.SmallRise;
        var needed = WarmUp.Hours(context.Production.Gauge, rise) * 3600;

        // Where only the day is known, the can may have come out at its start.
        var had = new Ratio((load.Value - taken.At).Ticks, TimeSpan.TicksPerSecond);
        return had + context.Of(Tolerances.WarmUpShort) >= needed
            ? null
            : Check.At(
                roll,
                load.Place,
                Sentence.Of(
                    "stock/loaded-cold.message.too-soon",
                    ("roll", roll.Name.Value),
                    ("had", Minutes(had)),
                    ("needed", Minutes(needed))
                )
            ) with
            {
                Others = [new(taken.Place, Sentence.Of("stock/loaded-cold.other.taken-out-here"))],
                Figures =
                [
                    new(Sentence.Of("stock/loaded-cold.figure.out-of-the-cold-for"), Minutes(had)),
                    new(Sentence.Of("stock/loaded-cold.figure.needed"), Minutes(needed)),
                    new(Sentence.Of("stock/loaded-cold.figure.short-by"), Minutes(needed - had)),
                ],
                Advice = Sentence.Of("stock/loaded-cold.help.too-soon"),
            };
    }

    static string Minutes(Ratio seconds)
    {
        var minutes = (long)(seconds / 60).Floor();
        return (minutes / 60, minutes % 60) switch
        {
            (0, var m) => $"{Context.Number(m)} min",
            (var h, 0) => $"{Context.Number(h)} h",
            var (h, m) => $"{Context.Number(h)} h {Context.Number(m)} min",
        };
    }
}
