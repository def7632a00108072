using Spoolbook.Papers.Ledger;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Papers.Workbook;

/// <summary>What each day exposed, wasted and left.</summary>
static class DaysSheet
{
    const string OfThisDay = "(Film[Day]=[@Date])";

    // In the evening: what came, less the units opened by then, the short ends canned by then and not loaded again, and what the stock log brought or took.
    const string OnHand = "(SUMPRODUCT((Stock[For]=\"shoot\")*Stock[Received frames])"
        + "-SUMPRODUCT((Loads[For]=\"shoot\")*(Loads[From]=\"unit\")*(Loads[Loaded on]<=[@Date])*Loads[Frames])"
        + "+SUMPRODUCT((ShortEnds[For]=\"shoot\")*(ShortEnds[Made]<=[@Date])*ShortEnds[Frames])"
        + "-SUMPRODUCT((ShortEnds[For]=\"shoot\")*(ShortEnds[Made]<=[@Date])*(ShortEnds[Used on]<>\"\")*(ShortEnds[Used on]<=[@Date])*(ShortEnds[Frames]-ShortEnds[Off]))"
        + "+SUMPRODUCT((StockLog[For]=\"shoot\")*(StockLog[On]<=[@Date])*StockLog[Change]))/FramesPerUnit";

    public static TableSheet<StockDay> Of(LedgerSource source, WorkbookUnits units) => new(
        "Days",
        "What each day exposed; head to end tell why film was wasted. On hand is what can be loaded in the evening: sealed units and short ends.",
        [
            new("Day", CellFormat.Count, 6, d => d.Day?.Number.Value),
            new("Date", CellFormat.Date, 12, d => (DateOnly?)d.On),
            new("Loaded", CellFormat.Length, 10, d => CellValue.Calculated("SUMPRODUCT((Rolls[Loaded on]=[@Date])*Rolls[Loaded])", units.Length(d.Loaded))) { Summed = true },
            .. FilmSheet.Accounts<StockDay>(OfThisDay, d => d.Use.Tally, units, bars: true),
            .. Enum.GetValues<WasteCause>().Select(c => Wasted(c, units)),
            new("Takes", CellFormat.Count, 7, d => CellValue.Calculated("SUMPRODUCT((Takes[Day]=[@Date])*1)", d.Use.Takes)) { Summed = true },
            .. FilmSheet.Use<StockDay>(d => d.Use, units),
            new("On hand", CellFormat.Length, 10, d => CellValue.Calculated(OnHand, units.Length(d.OnHand))),
        ],
        source.Stock.Days);

    static Column<StockDay> Wasted(WasteCause cause, WorkbookUnits units)
    {
        var word = Codes.Of(cause);
        var head = char.ToUpperInvariant(word[0]) + word[1..].Replace('-', ' ');
        var formula = $"SUMPRODUCT({OfThisDay}*(Film[Waste by]=\"{word}\")*Film[Frames])/FramesPerUnit";
        return new(head, CellFormat.Length, 8, d => CellValue.Calculated(formula, units.Length(d.Use.Tally.WastedBy(cause)))) { Summed = true };
    }
}
