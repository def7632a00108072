using Spoolbook.Papers.Ledger;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Papers.Workbook;

/// <summary>The lots, what was loaded from them, and the short ends.</summary>
static class StockSheets
{
    public static readonly Allowed Fors = Allowed.Only(["shoot", "practice"]);

    const string OfThisPiece = "EXACT(StockLog[Short end of],[@[From roll]])*(StockLog[Piece]=[@Piece])";

    const string OfThisLot = "EXACT(Film[Lot],[@Lot])";

    public static TableSheet<StockLotBook> Lots(LedgerSource source, WorkbookUnits units, WorkbookTerms say)
    {
        Column<StockLotBook> Length(string head, string formula, Func<StockLotBook, Film.Footage> length) =>
            new(head, CellFormat.Length, 11, l => CellValue.Calculated(formula, units.Length(length(l)))) { Summed = true };

        return new(
            "Stock",
            say["about.stock"],
            [
                new("Lot", CellFormat.Words, 12, l => l.Lot.Name.Value),
                new("Stock", CellFormat.Words, 22, l => l.Lot.Stock.Value),
                new("Emulsion", CellFormat.Words, 12, l => l.Lot.Emulsion?.Value),
                new("EI", CellFormat.Count, 6, l => l.Lot.Index.Value),
                new("Expires", CellFormat.Date, 11, l => l.Lot.Expires?.Value),
                new("For", CellFormat.Words, 9, l => For(l.Lot)) { Allowed = Fors },
                new("Units", CellFormat.Count, 6, l => l.UnitsReceived) { Summed = true, Allowed = Allowed.From(0) },
                new("Came", CellFormat.Count, 6, l => CellValue.Calculated(Moved("came"), l.UnitsCame)) { Summed = true },
                new("Sent", CellFormat.Count, 6, l => CellValue.Calculated(Moved("sent-away"), l.UnitsSentAway)) { Summed = true },
                new("Lost", CellFormat.Count, 6, l => CellValue.Calculated($"{Moved("lost")}+{Moved("damaged")}", l.UnitsLost))
                {
                    Summed = true,
                },
                new("Shot", CellFormat.Count, 6, l => CellValue.Calculated(Opened("<>"), l.UnitsLoaded)) { Summed = true },
                new("Practised", CellFormat.Count, 9, l => CellValue.Calculated(Opened("="), l.UnitsPractised)) { Summed = true },
                new("Sealed", CellFormat.Count, 7, l =>
                    CellValue.Calculated("[@Units]+[@Came]-[@Sent]-[@Lost]-[@Shot]-[@Practised]", l.UnitsUnopened)
                )
                {
                    Summed = true,
                },
                new("Frames a unit", CellFormat.Frames, 8, l => l.Lot.Length.Value.Frames),
                new("Received frames", CellFormat.Frames, 10, l => CellValue.Calculated("[@Units]*[@[Frames a unit]]", l.Received.Frames)),
                Length("Received", "[@[Received frames]]/FramesPerUnit", l => l.Received),
                Length("Came film", Film("(StockLog[What]=\"came\")"), l => l.Came),
                Length("Remeasured", "SUMPRODUCT(EXACT(Loads[Lot],[@Lot])*(Loads[Frames held]-Loads[Frames]))/FramesPerUnit", l =>
                    l.Remeasured
                ) with
                {
                    Width = 12,
                },
                Length(
                    "Sealed film",
                    $"([@[Received frames]]+{Change}-SUMPRODUCT(EXACT(Loads[Lot],"
                        + $"[@Lot])*(Loads[From]=\"unit\")*Loads[Frames]))/FramesPerUnit",
                    l => l.Unopened
                ),
                Length("Exposed", $"SUMPRODUCT({OfThisLot}*(Film[Account]<>\"SE\")*Film[Frames])/FramesPerUnit", l => l.Exposed),
                Length("Short ends", "SUMPRODUCT(EXACT(ShortEnds[Lot],[@Lot])*ShortEnds[On hand])/FramesPerUnit", l => l.ShortEnds),
                Length(
                    "In camera",
                    $"SUMPRODUCT({OfThisLot}*(Film[Account]=\"SE\")*(Film[In camera]=\"yes\")*Film[Frames])/FramesPerUnit",
                    l => l.InCamera
                ),
                Length("Practice", "SUMPRODUCT(EXACT(Loads[Lot],[@Lot])*(Loads[Use]=\"practice\")*Loads[Frames held])/FramesPerUnit", l =>
                    l.Practice
                ),
                Length("Sent film", Film("(StockLog[What]=\"sent-away\")"), l => l.SentAway),
                Length(
                    "Lost film",
                    Film(
                        "((StockLog[What]=\"lost\")+(StockLog[What]=\"damaged\")+(StockLog[What]=\"recanned\")+(StockLog[What]=\"split\"))"
                    ),
                    l => l.Lost
                ),
                Length("On hand", "[@[Sealed film]]+[@[Short ends]]", l => l.OnHand),
                Length("Left to shoot", "[@[On hand]]+[@[In camera]]", l => l.Left),
                new("Unit price", CellFormat.Rate, 9, l => l.Lot.UnitPrice?.Value),
            ],
            source.Stock.Lots
        )
        {
            PagesWide = 2,
            Finish = Short,
        };
    }

    public static TableSheet<StockLoad> Loads(LedgerSource source, WorkbookUnits units, WorkbookTerms say) =>
        new(
            "Loads",
            say["about.loads"],
            [
                new("Lot", CellFormat.Words, 22, l => l.Lot.Name.Value),
                new("From", CellFormat.Words, 11, l => l.IsUnit ? "unit" : "short end") { Allowed = Allowed.Only(["unit", "short end"]) },
                new("Unit", CellFormat.Count, 7, l => l.IsUnit ? l.Roll.Unit?.Value : null),
                new("Of roll", CellFormat.Words, 9, l => l.Parent?.Name.Value),
                new("Use", CellFormat.Words, 10, l => l.Roll.IsPractice ? "practice"
                    : l.Book is null ? "unread"
                    : "shot") { Allowed = Allowed.Only(["shot", "practice", "unread"]) },
                new("For", CellFormat.Words, 10, l => For(l.Lot)) { Allowed = Fors },
                new("Roll", CellFormat.Words, 12, l => l.Roll.Name.Value),
                new("Loaded on", CellFormat.Date, 12, l => (DateOnly?)DateOnly.FromDateTime(l.Roll.Load.On.Value)),
                new("Frames", CellFormat.Frames, 10, l => l.Said.Frames) { Summed = true },
                new("Frames held", CellFormat.Frames, 10, l => l.Held.Frames) { Summed = true },
                new("Held", CellFormat.Length, 12, l => CellValue.Calculated("[@[Frames held]]/FramesPerUnit", units.Length(l.Held)))
                {
                    Summed = true,
                },
            ],
            source.Stock.Loads
        );

    public static TableSheet<StockShortEnd> ShortEnds(LedgerSource source, WorkbookUnits units, WorkbookTerms say) =>
        new(
            "Short ends",
            say["about.short-ends"],
            [
                new("From roll", CellFormat.Words, 22, e => e.Parent.Name.Value),
                new("Piece", CellFormat.Count, 7, e => e.Piece) { Allowed = Allowed.From(1) },
                new("Lot", CellFormat.Words, 12, e => e.Lot.Name.Value),
                new("For", CellFormat.Words, 10, e => For(e.Lot)) { Allowed = Fors },
                new("Made", CellFormat.Date, 12, e => (DateOnly?)e.Made),
                new("Frames", CellFormat.Frames, 10, e => e.Length.Frames) { Summed = true },
                new("Length", CellFormat.Length, 12, e => CellValue.Calculated("[@Frames]/FramesPerUnit", units.Length(e.Length)))
                {
                    Summed = true,
                },
                new("Off", CellFormat.Frames, 8, e =>
                    CellValue.Calculated(
                        $"-SUMPRODUCT({OfThisPiece}*((StockLog[What]=\"recanned\")+(StockLog[What]=\"split\"))*StockLog[Change])",
                        Off(source, e)
                    )
                )
                {
                    Summed = true,
                },
                new("Kind", CellFormat.Words, 11, e => e.IsRecan ? "re-can" : "short end") { Codes = ["re-can", "short end"] },
                new("On hand", CellFormat.Frames, 9, e =>
                    CellValue.Calculated($"IF([@[Used on]]<>\"\",0,[@Frames]+SUMPRODUCT({OfThisPiece}*StockLog[Change]))", e.OnHand.Frames)
                )
                {
                    Summed = true,
                },
                new("Used as", CellFormat.Words, 12, e => e.UsedBy?.Name.Value),
                new("Used on", CellFormat.Date, 12, e =>
                    e.UsedBy is { } roll ? DateOnly.FromDateTime(roll.Load.On.Value) : (DateOnly?)null
                ),
            ],
            source.Stock.ShortEnds
        )
        {
            Table = "ShortEnds",
        };

    public static TableSheet<StockMove> Log(LedgerSource source, WorkbookTerms say) =>
        new(
            "Stock log",
            say["about.stock-log"],
            [
                new("On", CellFormat.Date, 22, m => (DateOnly?)m.On),
                new("What", CellFormat.Words, 11, m => m.Entry.Word)
                {
                    Allowed = Allowed.Only(["came", "sent-away", "lost", "damaged", "recanned", "split"]),
                },
                new("Lot", CellFormat.Words, 12, m => m.Lot.Name.Value),
                new("Unit", CellFormat.Count, 7, m => m.Unit),
                new("Short end of", CellFormat.Words, 9, m => m.ShortEndOf?.Name.Value),
                new("Piece", CellFormat.Count, 7, m => m.Piece),
                new("For", CellFormat.Words, 10, m => For(m.Lot)) { Allowed = Fors },
                new("With", CellFormat.Words, 24, m => m.With),
                new("Frames", CellFormat.Frames, 10, m => m.Film.Frames),
                new("Counts", CellFormat.Words, 8, m => m.Counts ? "yes" : "no") { Allowed = Allowed.Only(FilmSheet.YesNo) },
                new("Change", CellFormat.Frames, 10, m =>
                    CellValue.Calculated("IF([@Counts]=\"yes\",IF([@What]=\"came\",1,-1)*[@Frames],0)", m.Change.Frames)
                )
                {
                    Summed = true,
                },
                new("Fault", CellFormat.Words, 18, m => m.Fault is { } fault ? Codes.Of(fault) : default(CellValue))
                {
                    Codes = [.. Enum.GetValues<StockFault>().Select(Codes.Of)],
                },
                new("Note", CellFormat.LongWords, 40, m => m.Entry.Note?.Value),
            ],
            source.Stock.Moves
        )
        {
            Table = "StockLog",
        };

    static long Off(LedgerSource source, StockShortEnd end) =>
        -source
            .Stock.Moves.Where(m => m.IsOff && m.Piece == end.Piece && ReferenceEquals(m.ShortEndOf, end.Parent))
            .Sum(m => m.Change.Frames);

    static string Moved(string what) =>
        $"SUMPRODUCT(EXACT(StockLog[Lot],[@Lot])*(StockLog[Unit]<>\"\")*(StockLog[What]=\"{what}\")*(StockLog[Counts]=\"yes\"))";

    // Film of one kind of entry, in or out.
    static string Film(string what) => $"SUMPRODUCT(EXACT(StockLog[Lot],[@Lot])*{what}*ABS(StockLog[Change]))/FramesPerUnit";

    // The stock log's changes of units, in frames.
    const string Change = "SUMPRODUCT(EXACT(StockLog[Lot],[@Lot])*(StockLog[Short end of]=\"\")*StockLog[Change])";

    static string Opened(string practice) =>
        $"SUMPRODUCT(EXACT(Loads[Lot],[@Lot])*(Loads[From]=\"unit\")*(Loads[Use]{practice}\"practice\"))";

    public static string For(StockLot lot) => lot.Practice?.Value ?? false ? "practice" : "shoot";

    // A lot for shooting with nothing left to load.
    static void Short(WrittenTable table) => table.MarkWhere("On hand", "AND([@For]=\"shoot\",[@[On hand]]=0)", SheetWriter.Alarm);
}
