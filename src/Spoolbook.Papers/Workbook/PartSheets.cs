using Spoolbook.Papers.Ledger;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Papers.Workbook;

/// <summary>The film of each scene, each lot of stock and each camera body: the same columns, from the film or from the rolls.</summary>
static class PartSheets
{
    public static TableSheet<UseOfPart> Scenes(LedgerSource source, WorkbookUnits units, WorkbookTerms say) =>
        OfFilm("Scenes", "Scene", say["about.scenes"], source.Stock.Scenes, source, units);

    public static TableSheet<UseOfPart> Bodies(LedgerSource source, WorkbookUnits units, WorkbookTerms say) =>
        OfFilm("Bodies", "Body", say["about.bodies"], source.Stock.Bodies, source, units);

    // By the lots that the rolls name: film without any stock is in no row of the sheet Stock.
    public static TableSheet<UseOfPart> Lots(LedgerSource source, WorkbookUnits units, WorkbookTerms say)
    {
        static string OfRolls(string head) => $"SUMPRODUCT(EXACT(Rolls[Lot],[@Lot])*Rolls[{head}])";
        return Of(
            "Lots",
            "Lot",
            say["about.lots"],
            OfRolls("Takes"),
            (head, _) => OfRolls(WorkbookUnits.FramesOf(head)),
            source.Stock.ByLot,
            source,
            units
        );
    }

    static TableSheet<UseOfPart> OfFilm(
        string name,
        string part,
        string about,
        IReadOnlyList<UseOfPart> rows,
        LedgerSource source,
        WorkbookUnits units
    ) =>
        Of(
            name,
            part,
            about,
            $"IF([@{part}]=\"\",0,SUMPRODUCT(EXACT(Takes[{part}],[@{part}])*1))",
            (_, account) => FilmSheet.Sum(Codes.Of(account), $"EXACT(Film[{part}],[@{part}])"),
            rows,
            source,
            units
        );

    /// <param name="part">The head of the column with the row's part.</param>
    /// <param name="takes">The formula of its takes.</param>
    /// <param name="film">The formula of its film in an account, given the account and its head.</param>
    static TableSheet<UseOfPart> Of(
        string name,
        string part,
        string about,
        string takes,
        Func<string, Account, string> film,
        IReadOnlyList<UseOfPart> rows,
        LedgerSource source,
        WorkbookUnits units
    ) =>
        new(
            name,
            about,
            [
                new(part, CellFormat.Words, 22, s => s.Name),
                new("Takes", CellFormat.Count, 8, s => CellValue.Calculated(takes, s.Use.Takes)) { Summed = true },
                .. FilmSheet.Accounts<UseOfPart>(film, s => s.Use.Tally, s => source.Books.Metric.Of(s.Use), units),
                .. FilmSheet.Use<UseOfPart>(s => s.Use, units),
            ],
            rows
        );
}
