using Spoolbook.Papers.Ledger;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Papers.Workbook;

/// <summary>What each day exposed, wasted and left.</summary>
static class DaysSheet
{
    const string OfThisDay = "(Film[Day]=[@Date])";

    // In the evening: film received, less the units opened by then, plus the short ends canned by then and not loaded
    // again, and what the stock log added or took.
    const string OnHand =
        "(SUMPRODUCT((Stock[For]=\"shoot\")*Stock[Received frames])"
        + "-SUMPRODUCT((Loads[For]=\"shoot\")*(Loads[From]=\"unit\")*(Loads[Loaded on]<=[@Date])*Loads[Frames])"
        + "+SUMPRODUCT((ShortEnds[For]=\"shoot\")*(ShortEnds[Made]<=[@Date])*ShortEnds[Frames])"
        + "-SUMPRODUCT((ShortEnds[For]=\"shoot\")*(ShortEnds[Made]<=[@Date])*(ShortEnds[Used on]<>\"\")*(ShortEnds[Used "
        + "on]<=[@Date])*(ShortEnds[Frames]-ShortEnds[Off]))"
        + "+SUMPRODUCT((StockLog[For]=\"shoot\")*(StockLog[On]<=[@Date])*StockLog[Change]))/FramesPerUnit";

    // In a camera overnight, and not exposed yet.
    const string InCamera =
        "SUMPRODUCT((Film[For]=\"shoot\")*(Film[Loaded on]<=[@Date])*(((Film[Taken out]=\"\")+(Film[Taken out]>[@Date]))>0)"
        + "*(((Film[Account]=\"SE\")+(Film[Day]>[@Date]))>0)*Film[Frames])/FramesPerUnit";

    public static TableSheet<StockDay> Of(LedgerSource source, WorkbookUnits units, WorkbookTerms say) =>
        new(
            "Days",
            say["about.days"],
            [
                new("Day", CellFormat.Count, 6, d => d.Day?.Number.Value),
                new("Date", CellFormat.Date, 12, d => (DateOnly?)d.On),
                new("Loaded", CellFormat.Length, 10, d =>
                    CellValue.Calculated("SUMPRODUCT((Rolls[Loaded on]=[@Date])*Rolls[Loaded])", units.Length(d.Loaded))
                )
                {
                    Summed = true,
                },
                .. FilmSheet.Accounts<StockDay>(OfThisDay, d => d.Use.Tally, units, bars: true),
                .. Enum.GetValues<WasteCause>().Select(c => Wasted(c, units)),
                new("Takes", CellFormat.Count, 7, d => CellValue.Calculated("SUMPRODUCT((Takes[Day]=[@Date])*1)", d.Use.Takes))
                {
                    Summed = true,
                },
                .. FilmSheet.Use<StockDay>(d => d.Use, units),
                new("Good to date", CellFormat.Length, 10, d =>
                    CellValue.Calculated(
                        "SUMPRODUCT((Film[Day]<=[@Date])*(Film[Account]=\"G\")*Film[Frames])/FramesPerUnit",
                        units.Length(d.ToDate.Good)
                    )
                ),
                new("Exposed to date", CellFormat.Length, 10, d =>
                    CellValue.Calculated(
                        "SUMPRODUCT((Film[Day]<=[@Date])*(Film[Account]<>\"SE\")*Film[Frames])/FramesPerUnit",
                        units.Length(d.ToDate.Exposed)
                    )
                ),
                new("Exposed to good to date", CellFormat.ToOne, 13, d =>
                    FilmSheet.Ratio("[@[Exposed to date]]", "[@[Good to date]]", d.ExposedToGoodToDate)
                ),
                new("Short ends made", CellFormat.Length, 10, d =>
                    CellValue.Calculated(
                        "SUMPRODUCT((ShortEnds[For]=\"shoot\")*(ShortEnds[Made]=[@Date])*ShortEnds[Frames])/FramesPerUnit",
                        units.Length(d.ShortEndsMade)
                    )
                )
                {
                    Summed = true,
                },
                Moved("Came", ">", d => d.Came, units),
                Moved("Went", "<", d => d.Went, units),
                new("On hand", CellFormat.Length, 10, d => CellValue.Calculated(OnHand, units.Length(d.OnHand))),
                new("In camera", CellFormat.Length, 10, d => CellValue.Calculated(InCamera, units.Length(d.InCamera))),
                new("Left to shoot", CellFormat.Length, 10, d => CellValue.Calculated("[@[On hand]]+[@[In camera]]", units.Length(d.Left))),
            ],
            source.Stock.Days
        )
        {
            PagesWide = 2,
        };

    static Column<StockDay> Moved(string head, string sign, Func<StockDay, Film.Footage> length, WorkbookUnits units)
    {
        var formula =
            $"SUMPRODUCT((StockLog[For]=\"shoot\")*(StockLog[On]=[@Date])*(StockLog[Change]{sign}0)*ABS(StockLog[Change]))/FramesPerUnit";
        return new(head, CellFormat.Length, 9, d => CellValue.Calculated(formula, units.Length(length(d)))) { Summed = true };
    }

    static Column<StockDay> Wasted(WasteCause cause, WorkbookUnits units)
    {
        var word = Codes.Of(cause);
        var head = char.ToUpperInvariant(word[0]) + word[1..].Replace('-', ' ');
        var formula = $"SUMPRODUCT({OfThisDay}*(Film[Waste by]=\"{word}\")*Film[Frames])/FramesPerUnit";
        return new(head, CellFormat.Length, 8, d => CellValue.Calculated(formula, units.Length(d.Use.Tally.WastedBy(cause))))
        {
            Summed = true,
        };
    }
}
