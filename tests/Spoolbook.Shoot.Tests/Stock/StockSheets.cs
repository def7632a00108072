using Spoolbook.Film;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Tests.Sheets;

namespace Spoolbook.Shoot.Tests.Stock;

/// <summary>A sheet's stock, and the days of its loading and unloading.</summary>
static class StockSheets
{
    public static readonly DateOnly Friday = new(2026, 10, 2);
    public static readonly DateOnly Saturday = new(2026, 10, 3);
    public static readonly DateOnly Sunday = new(2026, 10, 4);
    public static readonly DateOnly Monday = new(2026, 10, 5);

    public static Sheet FromUnit(this Sheet sheet, int? unit, string lot = "N250-A") =>
        new(sheet.Roll with { Lot = Sheet.Written(lot), Unit = unit is { } number ? Sheet.Written(number) : null });

    public static Sheet ShortEndOf(this Sheet sheet, string parent) =>
        new(sheet.Roll with { ShortEndOf = Sheet.Written(parent), Lot = null, Unit = null });

    public static Sheet AsTheCanSays(this Sheet sheet) => new(sheet.Roll with { Length = null });

    public static Sheet ForPractice(this Sheet sheet) => new(sheet.Roll with { Practice = Sheet.Written(true) });

    public static Sheet LoadedOn(this Sheet sheet, DateOnly day, int hour = 9) =>
        new(sheet.Roll with { Load = sheet.Roll.Load with { On = Sheet.Written(day.ToDateTime(new TimeOnly(hour, 0))) } });

    /// <summary>Unloaded on another day than the builder's. The roll must be unloaded.</summary>
    public static Sheet OutOn(this Sheet sheet, DateOnly day) =>
        new(sheet.Roll with { Unload = sheet.Roll.Unload! with { On = Sheet.Written(day.ToDateTime(new TimeOnly(18, 0))) } });

    public static Sheet Lab(
        this Sheet sheet,
        string? process = null,
        double? push = null,
        bool? send = null,
        DateOnly? sent = null,
        params string[] services
    ) =>
        new(
            sheet.Roll with
            {
                Lab = new RollOrder(sheet.Roll.Place)
                {
                    Process = Sheet.Perhaps(process),
                    Push = Sheet.Perhaps(push),
                    Send = Sheet.Perhaps(send),
                    SentOn = Sheet.Perhaps(sent),
                    Services = [.. services.Select(Sheet.Written)],
                },
            }
        );

    /// <summary>These rolls and this stock log in a small production.</summary>
    public static Production With(Sheet[] sheets, params StockEntry[] log) => SmallProduction.Of(sheets) with { StockLog = [.. log] };

    /// <summary>The entry, about units of the small production's lot.</summary>
    public static StockEntry Units(StockEntry entry, params int[] units) => UnitsOf("N250-A", entry, units);

    /// <summary>The entry, about units of a lot.</summary>
    public static StockEntry UnitsOf(string lot, StockEntry entry, params int[] units) =>
        entry with
        {
            Lot = Sheet.Written(lot),
            Units = [.. units.Select(Sheet.Written)],
        };

    /// <summary>The entry, about the short end of a roll or a piece of it.</summary>
    public static StockEntry End(StockEntry entry, string parent = "R01", int? piece = null) =>
        entry with
        {
            ShortEndOf = Sheet.Written(parent),
            Piece = Sheet.Perhaps(piece),
        };

    public static Located<StockTime> When(DateOnly day, int? hour = null, int minute = 0) =>
        Sheet.Written(new StockTime(day, hour is { } at ? new TimeOnly(at, minute) : null));

    public static StockFault?[] Faults(Production production) => [.. production.Stock().Moves.Select(m => m.Fault)];

    public static StockBook Stock(this Production production) => Books.Of(production).Stock;

    public static StockLotBook OnlyLot(this Production production) => production.Stock().Lots.Single();

    public static Footage Sum<T>(this IEnumerable<T> things, Func<T, Footage> length) => new(things.Sum(t => length(t).Frames));
}
