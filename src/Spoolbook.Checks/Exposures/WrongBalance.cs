using System.Globalization;
using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Exposures;

static class WrongBalance
{
    public static readonly RecordCheck Check = new("exposure/wrong-balance", Level.Warning, Look);

    /// <summary>What is wrong with the light on a take's film.</summary>
    /// <param name="Warm">Whether the picture comes out orange; blue if not.</param>
    /// <param name="Converts">Whether the mistake is a filter on the lens, and not a missing one.</param>
    sealed record Fault(SubjectLight Light, bool Warm, bool Converts);

    static IEnumerable<Finding> Look(Context context) =>
        from roll in context.Production.Rolls
        let stock = context.Production.LotOf(roll)
        where !roll.IsPractice && stock is not null && stock.Balance != ColourBalance.None
        let judged = roll.Takes.Where(t => t.Mark.Value != Mark.Test && OffBy(context, stock, t) is not null)
        from run in Runs.Of(judged, take => FaultOf(context, stock, take))
        select Find(context, roll, stock, run);

    static Finding Find(Context context, Roll roll, StockLot stock, Run<Fault> run)
    {
        var (first, fault) = (run.First, run.Fault);
        var light = context.Production.LightOf(first)!;
        var place = fault.Converts ? first.Filters[0].Place : first.Light?.Place ?? first.Scene.Place;
        return Check.At(
            roll,
            first,
            place,
            Sentence.Of(
                (run.IsOne, fault.Warm) switch
                {
                    (true, true) => "exposure/wrong-balance.message.one-orange",
                    (true, false) => "exposure/wrong-balance.message.one-blue",
                    (false, true) => "exposure/wrong-balance.message.many-orange",
                    (false, false) => "exposure/wrong-balance.message.many-blue",
                },
                ("takes", run.Slates),
                ("stock", Word(stock.Balance)),
                ("light", Word(fault.Light)),
                ("filters", Filters(first))
            )
        ) with
        {
            Others =
            [
                new(stock.Stock.Place, Sentence.Of("exposure/wrong-balance.other.the-stock")),
                .. light.Place == place ? [] : new[] { new Related(light.Place, Sentence.Of("exposure/wrong-balance.other.the-light")) },
            ],
            Figures =
            [
                new(Sentence.Of("exposure/wrong-balance.figure.stock"), stock.Stock.Value),
                new(Sentence.Of("exposure/wrong-balance.figure.light"), Word(fault.Light)),
                new(
                    Sentence.Of("exposure/wrong-balance.figure.off-by"),
                    Sentence.Of(
                        "exposure/wrong-balance.value.mireds",
                        ("n", Math.Abs(OffBy(context, stock, first)!.Value).ToString("0", CultureInfo.InvariantCulture))
                    )
                ),
            ],
            Advice = Counsel(stock, fault),
        };
    }

    static Sentence Filters(Take take) =>
        take.Filters.Length == 0
            ? Sentence.Of("exposure/wrong-balance.value.no-filter")
            : Context.And(take.Filters.Select(f => Sentence.Of("exposure/wrong-balance.value.filter", ("filter", f.Value))));

    static Sentence Counsel(StockLot stock, Fault fault) =>
        Sentence.Of(
            fault.Converts ? "exposure/wrong-balance.help.take-off"
            : stock.Balance == ColourBalance.Tungsten ? "exposure/wrong-balance.help.tungsten-stock"
            : "exposure/wrong-balance.help.daylight-stock"
        );

    static Fault? FaultOf(Context context, StockLot stock, Take take)
    {
        var most = context.Of(Tolerances.BalanceMireds);
        var off = OffBy(context, stock, take)!.Value;
        return Math.Abs(off) <= most
            ? null
            : new Fault(context.Production.LightOf(take)!.Value, off > 0, Math.Abs(ShiftOf(context, take)!.Value) > most);
    }

    // Mireds too many (above zero: too warm) or too few; null where it is unknown.
    static double? OffBy(Context context, StockLot stock, Take take) =>
        context.Production.LightOf(take) is { Value: not SubjectLight.Mixed } light && ShiftOf(context, take) is { } shift
            ? shift - LightMatch.Wanted(stock.Balance, light.Value)
            : null;

    // Null where the filter's effect is unknown: neither the kit nor the makers' tables have it.
    static double? ShiftOf(Context context, Take take) =>
        take.Filters.Aggregate((double?)0, (sum, filter) =>
            sum + LightMatch.ShiftOf(context.Production.FilterNamed(filter.Value), filter.Value)
        );

    static Sentence Word(ColourBalance balance) =>
        Sentence.Of(
            balance == ColourBalance.Tungsten
                ? "exposure/wrong-balance.value.tungsten-stock"
                : "exposure/wrong-balance.value.daylight-stock"
        );

    static Sentence Word(SubjectLight light) =>
        Sentence.Of(
            light == SubjectLight.Tungsten ? "exposure/wrong-balance.value.tungsten-light" : "exposure/wrong-balance.value.daylight"
        );
}
