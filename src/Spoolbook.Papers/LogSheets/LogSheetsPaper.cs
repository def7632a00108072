using Spoolbook.Film;
using Spoolbook.Papers.Facts;
using Spoolbook.Papers.Jobs;
using Spoolbook.Papers.Logs;
using Spoolbook.Papers.Wording;
using Spoolbook.Shoot;
using Spoolbook.Shoot.Forecasts;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Papers.LogSheets;

/// <summary>Blank log sheets, to fill in by hand.</summary>
internal sealed class LogSheetsPaper : IPaper
{
    // Lines that fit on a single page, on two pages, and on each further page between head and signatures, with room
    // for a title of two lines.
    static readonly (int Alone, int Two, int More) LinesOfA4 = (22, 48, 34),
        LinesOfLetter = (20, 45, 32);

    // The next roll may turn out busier than those before it.
    static readonly Ratio Spare = new(5, 4);

    public IEnumerable<PaperJob> Jobs(PaperSource source)
    {
        yield return new PaperJob("log-sheets", "log-sheets.html", source.Words["log-sheets"], _ =>
            Of(source.Books, source.Head, source.Format)
        );
    }

    static LogSheetsFacts Of(Books books, PaperHead head, PaperFormat format) =>
        new(head)
        {
            Columns = LogColumn.OfSheet(format.Words, books.Production.Rolls.Any(r => r.Takes.Any(t => t.SaysSound))),
            Sheets = [.. Units(books, format), .. ShortEnds(books, format), Sheet("", null, null, books, format)],
            ReadyList = UsesReadyList(books.Production) ? [.. ReadyWords.All(format.Words)] : [],
            Gauge = books.Production.Gauge.Name,
            LengthUnit = format.LengthUnitName,
        };

    static IEnumerable<LogSheet> Units(Books books, PaperFormat format) =>
        from lot in books.Stock.Counted
        from unit in lot.Sealed
        select Sheet(PaperFormat.Number(unit), lot.Lot, lot.Lot.Length.Value, books, format);

    static IEnumerable<LogSheet> ShortEnds(Books books, PaperFormat format) =>
        from end in books.Stock.ShortEnds
        where end.OnHand.Frames > 0
        select Sheet(
            format.Words.Fill(end.IsRecan ? "re-can-of" : "short-end-of", ("roll", end.Parent.Name.Value)),
            end.Lot,
            end.OnHand,
            books,
            format
        );

    static LogSheet Sheet(string unit, StockLot? lot, Footage? film, Books books, PaperFormat format)
    {
        var lotAndUnit = lot is null ? "" : lot.Name.Value + " / " + unit;
        return new LogSheet(
            lot is null ? "" : StockFacts.NameOf(lot),
            lotAndUnit,
            lot?.Emulsion?.Value ?? "",
            lot is null ? "" : PaperFormat.Number(lot.Index.Value) + " " + format.Balance(lot.Balance),
            lot is null ? "" : format.ShortProcess(lot.Process.Value),
            film is { } length ? format.LengthWithUnit(length) : "",
            books.Shoot.Production.Bodies is [var only] ? RollPhrases.Body(only) : "",
            [.. Enumerable.Range(1, LinesFor(film, books)).Select(n => PaperFormat.Number(n))]
        );
    }

    // Not in the middle of a shoot that has done without.
    static bool UsesReadyList(Production production) =>
        production.Rolls.IsEmpty || production.Rolls.Any(r => r.Load.Ready is not null || !r.Load.NotReady.IsEmpty);

    // Fills the last page with lines: nobody wants a page with three.
    static int LinesFor(Footage? film, Books books)
    {
        var page = books.Shoot.Production.Paper == PaperSize.A4 ? LinesOfA4 : LinesOfLetter;
        var needed = film is { } length && LogLines.Expected(books.Shoot, length) is { } expected ? (int)(Spare * expected).Round() : 0;
        return needed <= page.Alone ? page.Alone : page.Two + (Math.Max(0, (needed - page.Two + page.More - 1) / page.More) * page.More);
    }
}
