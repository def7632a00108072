using System.Collections.Immutable;
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
    // Lines that fit on a single page, on the first of several, on one between, and on the last with the sums, with room for
    // a title of three lines, and one field of two.
    static readonly (int Alone, int First, int More, int Last) LinesOfA4 = (22, 23, 33, 30),
        LinesOfLetter = (22, 23, 32, 29);

    // Letters in a line of the title, beside a school's mark and without it, and of a field; and the lines of a head without
    // long names.
    const int BesideMark = 40,
        WithoutMark = 60,
        InField = 24,
        UsualTitle = 3,
        UsualFields = 1;

    // A line of the head in lines of the table, and a letter of what is invented, which is smaller, in letters of the title.
    const double HeadLine = 0.6,
        SmallLetter = 0.83;

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
            Columns = LogColumn.OfSheet(
                format.Words,
                books.Production.Rolls.Any(r => r.Takes.Any(t => t.SaysSound)),
                ReadingOf([.. books.Production.Rolls.SelectMany(r => r.Log)])
            ),
            Sheets =
            [
                .. Units(books, format)
                    .Concat(ShortEnds(books, format))
                    .Append(Sheet("", null, null, books, format))
                    .Select(s => s with { Pages = Pages(s, head, books, format) }),
            ],
            ReadyList = UsesReadyList(books.Production) ? [.. ReadyWords.All(format.Words)] : [],
            Gauge = books.Production.Gauge.Name,
            LengthUnit = format.LengthUnitName,
        };

    static IEnumerable<LogSheet> Units(Books books, PaperFormat format) =>
        from lot in books.Stock.Counted
        from unit in lot.Sealed
        select Sheet(PaperFormat.Number(unit), lot.Lot, books.Stock.FilmIn(lot.Lot, unit), books, format) with
        {
            XRayed = format.XRayed(books.Stock.XRaysOf(lot.Lot, unit)),
        };

    static IEnumerable<LogSheet> ShortEnds(Books books, PaperFormat format) =>
        from end in books.Stock.ShortEnds
        where end.OnHand.Frames > 0
        select Sheet(StockFacts.NameOf(end, format), end.Lot, end.OnHand, books, format) with
        {
            XRayed = format.XRayed(end.XRayed),
        };

    static LogSheet Sheet(string unit, StockLot? lot, Footage? film, Books books, PaperFormat format)
    {
        var lotAndUnit = lot is null ? "" : lot.Name.Value + " / " + unit;
        return new LogSheet(
            lot is null ? "" : StockFacts.NameOf(lot),
            lotAndUnit,
            lot?.Emulsion?.Value ?? "",
            lot is null ? "" : $"{PaperFormat.Number(lot.Index.Value)} {StockFacts.BalanceOf(lot, format)}".TrimEnd(),
            lot is null ? "" : format.ShortProcess(lot.Process.Value),
            film is { } length ? format.LengthWithUnit(length) : "",
            books.Shoot.Production.Bodies is [var only] ? RollPhrases.Body(only) : "",
            []
        )
        {
            Film = film,
        };
    }

    // What an assistant of this shoot reads off the camera beside the footage of a take.
    static string? ReadingOf(IReadOnlyCollection<LogEntry> log) =>
        (log.Any(e => e.Dial is not null), log.Any(e => e.Counter is not null)) switch
        {
            (true, true) => "dial-and-counter",
            (true, false) => "dial",
            (false, true) => "counter",
            _ => null,
        };

    // Not in the middle of a shoot that has done without.
    static bool UsesReadyList(Production production) =>
        production.Rolls.IsEmpty || production.Rolls.Any(r => r.Load.Ready is not null || !r.Load.NotReady.IsEmpty);

    // As few pages as hold the lines to expect, the last one filled: nobody wants a page with three.
    static ImmutableArray<LogSheetPage> Pages(LogSheet sheet, PaperHead head, Books books, PaperFormat format)
    {
        var page = books.Shoot.Production.Paper == PaperSize.A4 ? LinesOfA4 : LinesOfLetter;
        var taken = TakenByLongNames(sheet, head);
        page = page with { Alone = page.Alone - taken, First = page.First - taken };
        var expected = sheet.Film is { } length ? LogLines.Expected(books.Shoot, length) : null;
        var needed = expected is { } written ? (int)(Spare * written).Round() : 0;
        var more = Math.Max(0, needed - page.First - page.Last + page.More - 1) / page.More;
        int[] lines = needed <= page.Alone ? [page.Alone] : [page.First, .. Enumerable.Repeat(page.More, more), page.Last];
        return
        [
            .. lines.Select(
                (count, i) =>
                    new LogSheetPage(
                        lines.Length == 1
                            ? ""
                            : format.Words.Fill(
                                "log-sheet-of",
                                ("n", PaperFormat.Number(i + 1)),
                                ("all", PaperFormat.Number(lines.Length))
                            ),
                        i == 0,
                        i == lines.Length - 1,
                        [.. Enumerable.Range(lines.Take(i).Sum() + 1, count).Select(n => PaperFormat.Number(n))]
                    )
            ),
        ];
    }

    // Lines of the table for which long names leave no room. The sums belong on the sheet that they are added up on.
    static int TakenByLongNames(LogSheet sheet, PaperHead head)
    {
        static int Lines(string text) => LinesOf(text.Length, InField);
        static int LinesOf(double letters, int inALine) => Math.Max(1, (int)Math.Ceiling(letters / inALine));
        var title = LinesOf(
            (head.Production + " · " + head.Code + " · ").Length + (SmallLetter * head.Invented.Length),
            head.School is null ? WithoutMark : BesideMark
        );
        var upper = new[] { sheet.Stock + " " + sheet.XRayed, sheet.LotAndUnit, sheet.Emulsion }.Max(Lines);
        var lower = Math.Max(Lines(sheet.Body), Lines(sheet.Process));
        var more = Math.Max(0, title - UsualTitle) + Math.Max(0, upper + lower - 2 - UsualFields);
        return (int)Math.Ceiling(more * HeadLine);
    }
}
