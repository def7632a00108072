using Spoolbook.Papers.Ledger;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Papers.Workbook;

/// <summary>The rolls that count, one a row.</summary>
static class RollsSheet
{
    const string OfThisRoll = "EXACT(Film[Roll],[@Roll])";

    public static TableSheet<RollBook> Of(LedgerSource source, WorkbookUnits units, WorkbookTerms say)
    {
        var production = source.Shoot.Production;
        var format = say.FormatFor(production);
        StockLot? LotOf(RollBook roll) => production.LotOf(roll.Roll);
        return new(
            "Rolls",
            say["about.rolls"],
            [
                new("Roll", CellFormat.Words, 8, r => r.Roll.Name.Value),
                new("Stock", CellFormat.Words, 22, r => LotOf(r)?.Stock.Value),
                new("Lot", CellFormat.Words, 10, r => LotOf(r)?.Name.Value),
                new("Unit", CellFormat.Words, 7, r => Unit(r.Roll, source.Stock)),
                new("EI", CellFormat.Count, 5, r => r.Roll.Rated?.Value ?? LotOf(r)?.Index.Value),
                new("Process", CellFormat.Words, 14, r => r.LabWork.Process is { } process ? format.ShortProcess(process) : null),
                new("Push", CellFormat.Plain, 6, r => (double?)r.LabWork.Push),
                new("Body", CellFormat.Words, 6, r => r.Roll.Body?.Value),
                new("Loaded on", CellFormat.Date, 11, r => (DateTime?)r.Roll.Load.On.Value.Date),
                new("Taken out", CellFormat.Date, 11, r => r.Roll.Unload?.On.Value.Date),
                units.Film<RollBook>(
                    "Loaded",
                    9,
                    $"SUMPRODUCT({OfThisRoll}*Film[Frames])",
                    r => r.Strip.Loaded,
                    r => source.Books.Metric.Of(r).Loaded
                ),
                .. FilmSheet.Accounts<RollBook>(OfThisRoll, r => r.Tally, source.Books.Metric.Of, units),
                units.Film<RollBook>(
                    "Left over",
                    9,
                    FilmSheet.Sum("SE", OfThisRoll),
                    r => r.Tally.ShortEnd,
                    r => source.Books.Metric.Of(r).ShortEnd
                ),
                new("Takes", CellFormat.Count, 7, r => CellValue.Calculated("SUMPRODUCT(EXACT(Takes[Roll],[@Roll])*1)", r.Layers.Length))
                {
                    Summed = true,
                },
                .. FilmSheet.Use<RollBook>(r => UseOfFilm.Of(r.Tally, r.Layers, production.ProjectedAt), units),
            ],
            [.. source.Shoot.Counted]
        );
    }

    static string? Unit(Roll roll, StockBook stock) =>
        roll.ShortEndOf is { } parent
            ? stock.ShortEndIn(roll)?.Name ?? StockShortEnd.NameOf(parent.Value)
            : roll.Unit?.Value.ToString(System.Globalization.CultureInfo.InvariantCulture);
}
