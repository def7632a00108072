using Spoolbook.Papers.Ledger;
using Spoolbook.Shoot.Accounts;

namespace Spoolbook.Papers.Workbook;

/// <summary>The shots that are got or listed, and the film of all their takes: the input of the forecast.</summary>
static class ShotsSheet
{
    const string OfThisShot = "EXACT(Takes[Scene and shot],[@Shot])";

    public static TableSheet<CoveredShot> Of(LedgerSource source, WorkbookUnits units, WorkbookTerms say) =>
        new(
            "Shots",
            say["about.shots"],
            [
                new("Shot", CellFormat.Words, 22, s => s.Name),
                new("Listed", CellFormat.Words, 8, s => s.Planned is null ? "no" : "yes") { Codes = FilmSheet.YesNo },
                new("Takes", CellFormat.Count, 8, s => CellValue.Calculated($"SUMPRODUCT({OfThisShot}*1)", s.Takes.Length))
                {
                    Summed = true,
                },
                new("Good takes", CellFormat.Count, 8, s =>
                    CellValue.Calculated($"SUMPRODUCT({OfThisShot}*(Takes[Mark]=\"G\")*(Takes[Good frames]>0))", s.Good.Count())
                )
                {
                    Summed = true,
                },
                new("State", CellFormat.Words, 8, s => CellValue.CalculatedWords(
                        $"IF([@[Good takes]]>0,\"got\",\"{(s.IsDropped ? "dropped" : "left")}\")",
                        s.IsGot ? "got"
                            : s.IsDropped ? "dropped"
                            : "left"
                    )) { Codes = ["got", "left", "dropped"] },
                new("Frames", CellFormat.Frames, 10, s =>
                    CellValue.Calculated("SUMPRODUCT(EXACT(Film[Shot],[@Shot])*Film[Frames])", s.Film.Frames)
                )
                {
                    Summed = true,
                },
                units.OfColumn<CoveredShot>("Length", 9, "Frames", s => s.Film),
            ],
            [.. source.Books.Coverage.GotOrListed]
        );
}
