using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Papers.Ledger;
using Spoolbook.Papers.Wording;
using Spoolbook.Shoot.Accounts;

namespace Spoolbook.Papers.Workbook;

/// <summary>Where all the film is: how the shoot used it, and what is left. The bars of a chart.</summary>
static class AccountsTable
{
    public const string Table = "Accounts";

    public static TableSheet<FilmAccount> Of(LedgerSource source, WorkbookUnits units, WorkbookTerms say)
    {
        var accounts = Accounts(source, say);
        var all = accounts.Sum(a => a.Film.Frames);
        return new(
            "Film by account",
            say["about.accounts"],
            [
                new("Account", CellFormat.Words, 22, a => a.Called),
                new("Frames", CellFormat.Frames, 9, a => CellValue.Calculated(a.Formula, a.Film.Frames)) { Summed = true },
                units.OfColumn<FilmAccount>("Length", 9, "Frames", a => a.Film, a => a.Centimetres),
                new("Part", CellFormat.Percent, 9, a =>
                    FilmSheet.Ratio("[@Frames]", "SUM(Accounts[Frames])", all == 0 ? null : new Ratio(a.Film.Frames, all))
                ),
                new("In the chart", CellFormat.Seconds, 9, a => CellValue.Calculated("[@Frames]/FramesPerUnit", units.Length(a.Film))),
            ],
            accounts
        )
        {
            Table = Table,
        };
    }

    /// <summary>The accounts that there are: the places of the bridge from the film bought to the film left.</summary>
    public static ImmutableArray<FilmAccount> Accounts(LedgerSource source, WorkbookTerms say) =>
        [
            .. from place in source.Books.Bridge.Places
            where BridgeWords.IsShown(place)
            select new FilmAccount(
                say.Word(BridgeWords.KeyOf(place.What)),
                FormulaOf(place.What),
                Footage.Max(Footage.Zero, place.Film),
                place.Centimetres
            ),
        ];

    static string FormulaOf(FilmPlace place) =>
        place switch
        {
            FilmPlace.Good => "FilmGood",
            FilmPlace.Hold => "FilmHeld",
            FilmPlace.NoGood => "FilmNoGood",
            FilmPlace.Waste => "FilmWasted",
            FilmPlace.Practice => "SUM(Stock[Practice frames])+SUMPRODUCT((Stock[For]=\"practice\")*Stock[Left to shoot frames])",
            FilmPlace.ThrownAway => Moved("((StockLog[What]=\"recanned\")+(StockLog[What]=\"split\"))"),
            FilmPlace.Lost => Moved("(StockLog[What]=\"lost\")"),
            FilmPlace.Damaged => Moved("(StockLog[What]=\"damaged\")"),
            FilmPlace.SentAway => Moved("(StockLog[What]=\"sent-away\")"),
            FilmPlace.Unread => "SUMPRODUCT((Loads[Use]=\"unread\")*Loads[Frames held])",
            FilmPlace.InCamera => Left("In camera"),
            FilmPlace.ShortEnds => Left("Short ends"),
            FilmPlace.Unopened => Left("Sealed film"),
            _ => throw new ArgumentOutOfRangeException(nameof(place), place, "No formula for this place."),
        };

    static string Left(string column) => $"MAX(0,SUMPRODUCT((Stock[For]=\"shoot\")*Stock[{column} frames]))";

    /// <summary>Film of one kind of entry that is still so.</summary>
    internal static string Moved(string what) => $"SUMPRODUCT({what}*(StockLog[Still so]=\"yes\")*ABS(StockLog[Change]))";
}
