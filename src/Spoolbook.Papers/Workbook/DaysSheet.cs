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
        "SUMPRODUCT((Stock[For]=\"shoot\")*Stock[Received frames])"
        + "-SUMPRODUCT((Loads[For]=\"shoot\")*(Loads[From]=\"unit\")*(Loads[Loaded on]<=[@Date])*Loads[Frames])"
        + "+SUMPRODUCT((ShortEnds[For]=\"shoot\")*(ShortEnds[Made]<=[@Date])*ShortEnds[Frames])"
        + "-SUMPRODUCT((ShortEnds[For]=\"shoot\")*(ShortEnds[Made]<=[@Date])*(ShortEnds[Used on]<>\"\")*(ShortEnds[Used "
        + "on]<=[@Date])*(ShortEnds[Frames]-ShortEnds[Off]))"
        + "+SUMPRODUCT((StockLog[For]=\"shoot\")*(StockLog[On]<=[@Date])*StockLog[Change])";

    // In a camera overnight, and not exposed yet.
    const string InCamera =
        "SUMPRODUCT((Film[For]=\"shoot\")*(Film[Loaded on]<=[@Date])*(((Film[Taken out]=\"\")+(Film[Taken out]>[@Date]))>0)"
        + "*(((Film[Account]=\"SE\")+(Film[Day]>[@Date]))>0)*Film[Frames])";

    public static TableSheet<StockDay> Of(LedgerSource source, WorkbookUnits units, WorkbookTerms say)
    {
        var metric = source.Books.Metric;
        return new(
            "Days",
            say["about.days"],
            [
                new("Day", CellFormat.Count, 6, d => d.Day?.Number.Value),
                new("Date", CellFormat.Date, 11, d => (DateOnly?)d.On),
                units.Film<StockDay>(
                    "Loaded",
                    9,
                    "SUMPRODUCT((Rolls[Loaded on]=[@Date])*Rolls[Loaded frames])",
                    d => d.Loaded,
                    d => metric.Of(d).Loaded
                ),
                .. FilmSheet.Accounts<StockDay>(OfThisDay, d => d.Use.Tally, d => metric.Of(d.Use), units),
                new("Takes", CellFormat.Count, 6, d => CellValue.Calculated("SUMPRODUCT((Takes[Day]=[@Date])*1)", d.Use.Takes))
                {
                    Summed = true,
                },
                .. FilmSheet.Use<StockDay>(d => d.Use, units),
                Plain("Good to date", "SUMPRODUCT((Film[Day]<=[@Date])*(Film[Account]=\"G\")*Film[Frames])", d => d.ToDate.Good, units) with
                {
                    Aside = true,
                },
                Plain(
                    "Exposed to date",
                    "SUMPRODUCT((Film[Day]<=[@Date])*(Film[Account]<>\"SE\")*Film[Frames])",
                    d => d.ToDate.Exposed,
                    units
                ) with
                {
                    Aside = true,
                },
                new("Exposed to good to date", CellFormat.ToOne, 10, d =>
                    FilmSheet.Ratio("[@[Exposed to date frames]]", "[@[Good to date frames]]", d.ExposedToGoodToDate)
                ),
                units.Film<StockDay>(
                    "Short ends made",
                    9,
                    "SUMPRODUCT((ShortEnds[For]=\"shoot\")*(ShortEnds[Made]=[@Date])*ShortEnds[Frames])",
                    d => d.ShortEndsMade,
                    d => metric.Of(d).ShortEnds
                ),
                Moved("Came", ">", d => d.Came, units),
                Moved("Went", "<", d => d.Went, units),
                Plain("On hand", OnHand, d => d.OnHand, units, d => metric.Of(d).OnHand),
                Plain("In camera", InCamera, d => d.InCamera, units),
                Plain("Left to shoot", "[@[On hand frames]]+[@[In camera frames]]", d => d.Left, units),
                .. Enum.GetValues<WasteCause>().Select(c => Wasted(c, source, units)),
            ],
            source.Stock.Days
        );
    }

    // What is left in an evening adds up to nothing.
    static Column<StockDay> Plain(
        string head,
        string frames,
        Func<StockDay, Film.Footage> film,
        WorkbookUnits units,
        Func<StockDay, long>? centimetres = null
    ) => units.Film(head, 9, frames, film, centimetres) with { Summed = false };

    static Column<StockDay> Moved(string head, string sign, Func<StockDay, Film.Footage> film, WorkbookUnits units) =>
        units.Film(
            head,
            8,
            $"SUMPRODUCT((StockLog[For]=\"shoot\")*(StockLog[On]=[@Date])*(StockLog[Change]{sign}0)*ABS(StockLog[Change]))",
            film
        ) with
        {
            Aside = true,
        };

    static Column<StockDay> Wasted(WasteCause cause, LedgerSource source, WorkbookUnits units)
    {
        var word = Codes.Of(cause);
        var head = char.ToUpperInvariant(word[0]) + word[1..].Replace('-', ' ');
        return units.Film<StockDay>(
            head,
            8,
            $"SUMPRODUCT({OfThisDay}*(Film[Waste by]=\"{word}\")*Film[Frames])",
            d => d.Use.Tally.WastedBy(cause),
            d => source.Books.Metric.Of(d.Use).Wasted.GetValueOrDefault(cause)
        ) with
        {
            Aside = true,
        };
    }
}
