using Spoolbook.Papers.Ledger;
using Spoolbook.Shoot.Accounts;

namespace Spoolbook.Papers.Workbook;

/// <summary>What each scene took.</summary>
static class ScenesSheet
{
    const string OfThisScene = "EXACT(Film[Scene],[@Scene])";

    public static TableSheet<UseOfPart> Of(LedgerSource source, WorkbookUnits units) => new(
        "Scenes",
        "Film that a take was shot on, by scene. Film in no take (head, tail, gaps) stands last, without a scene.",
        [
            new("Scene", CellFormat.Words, 22, s => s.Name),
            new("Takes", CellFormat.Count, 8, s => CellValue.Calculated("IF([@Scene]=\"\",0,SUMPRODUCT(EXACT(Takes[Scene],[@Scene])*1))", s.Use.Takes)) { Summed = true },
            .. FilmSheet.Accounts<UseOfPart>(OfThisScene, s => s.Use.Tally, units, bars: true),
            .. FilmSheet.Use<UseOfPart>(s => s.Use, units),
        ],
        source.Stock.Scenes);
}
