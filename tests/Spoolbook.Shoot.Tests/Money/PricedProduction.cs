using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Tests.Sheets;
using Spoolbook.Shoot.Tests.Stock;
using static Spoolbook.Shoot.Tests.Sheets.Sheet;

namespace Spoolbook.Shoot.Tests.Money;

/// <summary>A production with every rate written, and ways to change one.</summary>
static class PricedProduction
{
    public static Rates Full { get; } =
        new(default)
        {
            Currency = Written("EUR"),
            Processes = [Process("ecn-2", 0.32m, 25m), Process("bw-reversal", 0.41m, null)],
            PushPerStop = Written(new PushRate(12m, null)),
            PrepPerRoll = Written(8m),
            Scan = ByFoot(0.45m),
            Workprint = ByFoot(0.60m),
            Shipping = Written(18m),
            Tax = Written(0.19m),
        };

    public static ProcessRate Process(string name, decimal foot, decimal? minimum) =>
        new(default, Written(name), ByFoot(foot), Perhaps(minimum));

    public static LengthRate ByFoot(decimal price) => new(Written(price), LengthUnit.Feet);

    public static LengthRate ByMetre(decimal price) => new(Written(price), LengthUnit.Metres);

    /// <summary>A roll of so many feet of the first lot, shot to its end and unloaded.</summary>
    public static Sheet Shot(long feet, string name = "R01", int unit = 1) =>
        Sheet.Of(At(feet), name).FromUnit(unit).Take("7B/1", At(feet)).Unload();

    public static Production Of(params Sheet[] sheets) => Priced(SmallProduction.Of(sheets));

    public static Production Priced(Production production) =>
        production with
        {
            Rates = Full,
            Lots = [.. production.Lots.Select(l => l with { UnitPrice = Written(38.50m) })],
        };

    public static CostBook Cost(this Production production) => Books.Of(production).Cost;

    public static CostLine Line(this CostBook cost, CostKind kind) => cost.Lines.Single(l => l.Kind == kind);
}
