using CsCheck;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Tests.Sheets;

namespace Spoolbook.Shoot.Tests.Stock;

/// <summary>
/// Shoots for laws: up to eight rolls of two lots over three days, with short ends, short ends of short ends,
/// dummy rolls, and careless sheets: units twice, units that never came, no unit, parents that left nothing.
/// </summary>
static class AnyShoot
{
    static readonly StockLot First = SmallProduction.Lot with { Length = Sheet.Written(Sheet.Frames(280)), Units = Sheet.Written(4) };
    static readonly StockLot Second = First with { Name = Sheet.Written("BW-1"), Units = Sheet.Written(2) };

    static readonly Gen<Func<Sheet, Sheet>> FromStock = Gen.Frequency<Func<Sheet, Sheet>>(
        (5, from unit in Gen.Int[0, 6] from lot in Gen.OneOf(Gen.Const("N250-A"), Gen.Const("BW-1"), Gen.Const("NONE")) select new Func<Sheet, Sheet>(s => s.FromUnit(unit, lot))),
        (1, Gen.Const<Func<Sheet, Sheet>>(s => s.FromUnit(null))),
        (3, Gen.Int[1, 8].Select(parent => new Func<Sheet, Sheet>(s => s.ShortEndOf($"R{parent}")))));

    static readonly Gen<Sheet> Roll =
        from sheet in AnyRoll.Sheet
        from stock in FromStock
        from lengthKnown in Gen.Bool
        from practice in Gen.Frequency((5, Gen.Const(false)), (1, Gen.Const(true)))
        from day in Gen.Int[0, 2]
        from days in Gen.Int[0, 2]
        from push in Gen.Int[-1, 2].Select(halves => halves == 2 ? (double?)null : halves * 0.5)
        select Finish(stock(lengthKnown ? sheet : sheet.AsTheCanSays()), practice, day, days, push);

    public static Gen<Production> Production { get; } =
        from rolls in Roll.Array[0, 8]
        select SmallProduction.Of(rolls.Select((s, i) => new Sheet(s.Roll with { Name = Sheet.Written($"R{i + 1}") }))) with { Lots = [First, Second] };

    static Sheet Finish(Sheet sheet, bool practice, int day, int days, double? push)
    {
        var loaded = sheet.LoadedOn(StockSheets.Friday.AddDays(day)).Lab(push: push);
        var taken = loaded.Roll.Unload is null ? loaded : loaded.OutOn(StockSheets.Friday.AddDays(day + days));
        return practice ? taken.ForPractice() : taken;
    }
}
