using Spoolbook.Shoot.Accounts;
using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Shoot.Forecasts;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Papers.Facts;

/// <summary>The facts of the blank log sheets: one for each roll still to be shot, and one that says nothing of its stock.</summary>
public sealed record LogSheetsFacts(PaperHead Head) : PaperFacts(Head)
{
    public required ImmutableArray<LogSheet> Sheets { get; init; }
    public required string LengthUnit { get; init; }
}

/// <summary>A sheet to be written on by hand; what is empty is written there.</summary>
/// <param name="Rated">The exposure index of the stock and its colour balance; what it is rated at is decided on the day.</param>
/// <param name="Lines">An item for each line to be ruled.</param>
public sealed record LogSheet(string Stock, string LotAndUnit, string Emulsion, string Rated, string Process, string Loaded, string Body, ImmutableArray<string> Lines);

/// <summary>Gathers the facts of blank log sheets.</summary>
internal static class LogSheets
{
    // Lines that a page holds between head and signatures, that two hold, and that each page between them adds; with room
    // for a title that runs over a line.
    static readonly (int Alone, int Two, int More) LinesOfA4 = (20, 48, 34), LinesOfLetter = (18, 45, 32);

    // A roll may always turn out busier than those before it.
    static readonly Ratio Spare = new(5, 4);

    public static LogSheetsFacts Of(Books books, PaperHead head, Wording say) => new(head)
    {
        Sheets = [.. Units(books, say), .. ShortEnds(books, say), Sheet("", null, null, books, say)],
        LengthUnit = say.LengthUnitName,
    };

    static IEnumerable<LogSheet> Units(Books books, Wording say) =>
        from lot in books.Stock.Counted
        from unit in lot.Sealed
        select Sheet(Wording.Number(unit), lot.Lot, lot.Lot.Length.Value, books, say);

    static IEnumerable<LogSheet> ShortEnds(Books books, Wording say) =>
        from end in books.Stock.ShortEnds
        where end.OnHand.Frames > 0
        select Sheet(say.Words.Fill("short-end-of", ("roll", end.Parent.Name.Value)), end.Lot, end.OnHand, books, say);

    static LogSheet Sheet(string unit, StockLot? lot, Footage? film, Books books, Wording say)
    {
        var lotAndUnit = lot is null ? "" : lot.Name.Value + " / " + unit;
        return new LogSheet(
            lot?.Stock.Value ?? "",
            lotAndUnit,
            lot?.Emulsion?.Value ?? "",
            lot is null ? "" : Wording.Number(lot.Index.Value) + " " + say.Balance(lot.Balance),
            lot?.Process.Value ?? "",
            film is { } length ? say.LengthWithUnit(length) : "",
            books.Shoot.Production.Bodies is [var only] ? CameraReport.BodyOf(only) : "",
            [.. Enumerable.Range(1, LinesFor(film, books)).Select(n => Wording.Number(n))]);
    }

    // Pages are ruled full: nobody wants a last one with three lines.
    static int LinesFor(Footage? film, Books books)
    {
        var page = books.Shoot.Production.Paper == PaperSize.A4 ? LinesOfA4 : LinesOfLetter;
        var needed = film is { } length && LogLines.Expected(books.Shoot, length) is { } expected ? (int)(Spare * expected).Round() : 0;
        return needed <= page.Alone ? page.Alone : page.Two + (Math.Max(0, (needed - page.Two + page.More - 1) / page.More) * page.More);
    }
}
