using CsCheck;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Tests.Sheets;

namespace Spoolbook.Shoot.Tests.Stock;

/// <summary>
/// Random shoots for laws: up to eight rolls of two lots over three days, with short ends, short ends of short ends,
/// dummy rolls, a stock log, and careless sheets: units twice, units that never came, no unit, parents that left
/// nothing, and impossible entries of the log.
/// </summary>
static class AnyShoot
{
    static readonly StockLot First = SmallProduction.Lot with { Length = Sheet.Written(Sheet.Frames(280)), Units = Sheet.Written(4) };
    static readonly StockLot Second = First with { Name = Sheet.Written("BW-1"), Units = Sheet.Written(2) };

    static readonly Gen<Func<Sheet, Sheet>> FromStock = Gen.Frequency<Func<Sheet, Sheet>>(
        (
            5,
            from unit in Gen.Int[0, 6]
            from lot in Gen.OneOf(Gen.Const("N250-A"), Gen.Const("BW-1"), Gen.Const("NONE"))
            select new Func<Sheet, Sheet>(s => s.FromUnit(unit, lot))
        ),
        (1, Gen.Const<Func<Sheet, Sheet>>(s => s.FromUnit(null))),
        (3, Gen.Int[1, 8].Select(parent => new Func<Sheet, Sheet>(s => s.ShortEndOf($"R{parent}"))))
    );

    static readonly Gen<Sheet> Roll =
        from sheet in AnyRoll.Sheet
        from stock in FromStock
        from lengthKnown in Gen.Bool
        from practice in Gen.Frequency((5, Gen.Const(false)), (1, Gen.Const(true)))
        from day in Gen.Int[0, 2]
        from days in Gen.Int[0, 2]
        from push in Gen.Int[-1, 2].Select(halves => halves == 2 ? (double?)null : halves * 0.5)
        select Finish(stock(lengthKnown ? sheet : sheet.AsTheCanSays()), practice, day, days, push);

    static readonly Gen<StockEntry> Entry =
        from kind in Gen.Int[0, 5]
        from unit in Gen.Int[1, 6]
        from again in Gen.Int[1, 6]
        from lot in Gen.OneOf(Gen.Const("N250-A"), Gen.Const("BW-1"), Gen.Const("NONE"))
        from parent in Gen.Int[0, 12]
        from day in Gen.Int[-1, 4]
        from hour in Gen.Int[-8, 20]
        from off in Gen.Long[0, 150]
        select On(
            Of(kind, Sheet.Frames(off)),
            StockSheets.Friday.AddDays(day),
            hour,
            parent is 0 or > 8 ? (lot, unit, again) : null,
            $"R{parent}"
        );

    public static Gen<Production> Production { get; } =
        from rolls in Roll.Array[0, 8]
        from log in Gen.Frequency((1, Gen.Const<StockEntry[]>([])), (3, Entry.Array[1, 8]))
        select SmallProduction.Of(rolls.Select((s, i) => new Sheet(s.Roll with { Name = Sheet.Written($"R{i + 1}") }))) with
        {
            Lots = [First, Second],
            StockLog = [.. log],
        };

    static StockEntry Of(int kind, Film.Footage off)
    {
        var place = SmallProduction.Lot.Place;
        var on = Sheet.Written(new StockTime(StockSheets.Friday, null));
        return kind switch
        {
            0 => new StockCame(place) { On = on },
            1 => new StockSentAway(place) { On = on },
            2 => new StockLost(place) { On = on },
            3 => new StockDamaged(place) { On = on },
            5 => new StockSplit(place) { On = on, Into = [Sheet.Written(off), Sheet.Written(off + Sheet.Frames(20))] },
            _ => new StockRecanned(place) { On = on, Off = Sheet.Written(off) },
        };
    }

    static StockEntry On(StockEntry entry, DateOnly day, int hour, (string Lot, int Unit, int Again)? units, string parent) =>
        entry with
        {
            On = Sheet.Written(new StockTime(day, hour < 0 ? null : new TimeOnly(hour, 0))),
            Lot = units is { } lot && entry is not StockSplit ? Sheet.Written(lot.Lot) : null,
            Units = units is { } of && entry is not StockSplit ? [Sheet.Written(of.Unit), Sheet.Written(of.Again)] : [],
            ShortEndOf = units is null || entry is StockSplit ? Sheet.Written(parent) : null,
        };

    static Sheet Finish(Sheet sheet, bool practice, int day, int days, double? push)
    {
        var loaded = sheet.LoadedOn(StockSheets.Friday.AddDays(day)).Lab(push: push);
        var taken = loaded.Roll.Unload is null ? loaded : loaded.OutOn(StockSheets.Friday.AddDays(day + days));
        return practice ? taken.ForPractice() : taken;
    }
}
