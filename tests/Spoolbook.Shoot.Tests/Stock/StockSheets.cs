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

    public static StockBook Stock(this Production production) => Books.Of(production).Stock;

    public static StockLotBook OnlyLot(this Production production) => production.Stock().Lots.Single();

    public static Footage Sum<T>(this IEnumerable<T> things, Func<T, Footage> length) => new(things.Sum(t => length(t).Frames));
}
