using Spoolbook.Papers.Ledger;
using Spoolbook.Shoot.Accounts;

namespace Spoolbook.Papers.Workbook;

/// <summary>What each scene, each lot of stock and each camera body took.</summary>
static class PartSheets
{
    public static TableSheet<UseOfPart> Scenes(LedgerSource source, WorkbookUnits units, WorkbookWords say) => new(
        "Scenes",
        say["about.scenes"],
        [
            new("Scene", CellFormat.Words, 22, s => s.Name),
            .. OfFilm("Scene", "EXACT(Film[Scene],[@Scene])", "EXACT(Takes[Scene],[@Scene])*1", units),
        ],
        source.Stock.Scenes);

    public static TableSheet<UseOfPart> Bodies(LedgerSource source, WorkbookUnits units, WorkbookWords say) => new(
        "Bodies",
        say["about.bodies"],
        [
            new("Body", CellFormat.Words, 22, s => s.Name),
            .. OfFilm("Body", "EXACT(Film[Body],[@Body])", "EXACT(Takes[Body],[@Body])*1", units),
        ],
        source.Stock.Bodies);

    // By the lots that the rolls name: what no stock could be found for is in no row of the sheet Stock.
    public static TableSheet<UseOfPart> Lots(LedgerSource source, WorkbookUnits units, WorkbookWords say) => new(
        "Lots",
        say["about.lots"],
        [
            new("Lot", CellFormat.Words, 22, s => s.Name),
            new("Takes", CellFormat.Count, 8, s => CellValue.Calculated(OfRolls("Takes"), s.Use.Takes)) { Summed = true },
            Account("Good", t => t.Good, units),
            Account("Hold", t => t.Hold, units),
            Account("No good", t => t.NoGood, units),
            Account("Waste", t => t.Waste, units),
            new("Exposed", CellFormat.Length, 10, s => CellValue.Calculated("[@Good]+[@Hold]+[@[No good]]+[@Waste]", units.Length(s.Use.Tally.Exposed))) { Summed = true, Bars = true },
            .. FilmSheet.Use<UseOfPart>(s => s.Use, units),
        ],
        source.Stock.ByLot);

    static IEnumerable<Column<UseOfPart>> OfFilm(string head, string film, string takes, WorkbookUnits units) =>
    [
        new("Takes", CellFormat.Count, 8, s => CellValue.Calculated($"IF([@{head}]=\"\",0,SUMPRODUCT({takes}))", s.Use.Takes)) { Summed = true },
        .. FilmSheet.Accounts<UseOfPart>(film, s => s.Use.Tally, units, bars: true),
        .. FilmSheet.Use<UseOfPart>(s => s.Use, units),
    ];

    static Column<UseOfPart> Account(string head, Func<Tally, Film.Footage> length, WorkbookUnits units) =>
        new(head, CellFormat.Length, 10, s => CellValue.Calculated(OfRolls(head), units.Length(length(s.Use.Tally)))) { Summed = true };

    static string OfRolls(string head) => $"SUMPRODUCT(EXACT(Rolls[Lot],[@Lot])*Rolls[{head}])";
}
