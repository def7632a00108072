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

    /// <summary>What is left of each stock, whatever the number of its lots.</summary>
    public static TableSheet<StockKind> Kinds(LedgerSource source, WorkbookUnits units, WorkbookTerms say)
    {
        const string ofThisStock = "EXACT(Stock[Stock],[@Stock])*(Stock[EI]=[@EI])*(Stock[For]=\"shoot\")";
        var metric = source.Books.Metric;
        Column<StockKind> OfKind(string head, Func<StockKind, Film.Footage> film, Func<MetricStock, long> centimetres) =>
            new(head, CellFormat.Length, 9, k =>
                units.Shown($"SUMPRODUCT({ofThisStock}*Stock[{head} frames])", film(k), centimetres(metric.Of(k.Lots)))
            );
        return new(
            "Film left by stock",
            say["about.stock-in-hand"],
            [
                new("Stock", CellFormat.Words, 22, k => k.Name),
                new("EI", CellFormat.Count, 12, k => k.Lots[0].Lot.Index.Value),
                new("Sealed", CellFormat.Count, 12, k => CellValue.Calculated($"SUMPRODUCT({ofThisStock}*Stock[Sealed])", k.Unopened))
                {
                    Summed = true,
                },
                OfKind("Short ends", k => k.ShortEnds, m => m.ShortEnds),
                OfKind("On hand", k => k.OnHand, m => m.OnHand),
                OfKind("In camera", k => k.InCamera, m => m.InCamera),
                units.OfColumn<StockKind>("Left to shoot", 9, "Frames", k => k.Left, k => metric.Of(k.Lots).Left),
                new("Frames", CellFormat.Frames, 9, k =>
                    CellValue.Calculated($"SUMPRODUCT({ofThisStock}*Stock[Left to shoot frames])", k.Left.Frames)
                )
                {
                    Summed = true,
                },
            ],
            [.. source.Stock.Kinds]
        )
        {
            Table = "StockKinds",
            Finish = t =>
            {
                foreach (var (i, _) in source.Stock.Kinds.Index())
                {
                    t.Sheet.Workbook.NamedRanges.Add(LeftName(i), t.Cells("Frames").Cell(i + 1, 1).AsRange());
                }
            },
        };
    }

    /// <summary>The defined name of the frames left of a stock, by its place among the stocks.</summary>
    public static string LeftName(int kind) => "LeftOfStock" + (kind + 1).ToString(System.Globalization.CultureInfo.InvariantCulture);

    public static TableSheet<StockLotBook> Lots(LedgerSource source, WorkbookUnits units, WorkbookTerms say)
    {
        var metric = source.Books.Metric;
        Column<StockLotBook> Length(
            string head,
            string frames,
            Func<StockLotBook, Film.Footage> film,
            Func<MetricStock, long>? centimetres = null,
            bool signed = false
        ) => units.Film(head, 9, frames, film, centimetres is null ? null : l => centimetres(metric.Of(l)), signed);
        Column<StockLotBook> Beside(string head, string frames, Func<StockLotBook, Film.Footage> film, bool signed = false) =>
            Length(head, frames, film, null, signed) with
            {
                Aside = true,
            };

        return new(
            "Stock",
            say["about.stock"],
            [
                new("Stock", CellFormat.Words, 22, l => l.Lot.Stock.Value),
                new("Lot", CellFormat.Words, 12, l => l.Lot.Name.Value),
                new("Emulsion", CellFormat.Words, 12, l => l.Lot.Emulsion?.Value),
                new("EI", CellFormat.Count, 7, l => l.Lot.Index.Value),
                new("Expires", CellFormat.Date, 11, l => l.Lot.Expires?.Value),
                new("For", CellFormat.Words, 10, l => For(l.Lot)) { Allowed = Fors },
                new("Units", CellFormat.Count, 7, l => l.UnitsReceived) { Summed = true, Allowed = Allowed.From(0) },
                new("Sealed", CellFormat.Count, 8, l =>
                    CellValue.Calculated("[@Units]+[@Came]-[@Sent]-[@Lost]-[@Shot]-[@Practised]", l.UnitsUnopened)
                )
                {
                    Summed = true,
                },
                units.OfColumn<StockLotBook>("Received", 9, "Received frames", l => l.Received, l => metric.Of(l).Received),
                Length("Exposed", $"SUMPRODUCT({OfThisLot}*(Film[Account]<>\"SE\")*Film[Frames])", l => l.Exposed),
                Length("Short ends", "SUMPRODUCT(EXACT(ShortEnds[Lot],[@Lot])*ShortEnds[On hand])", l => l.ShortEnds, m => m.ShortEnds),
                Length("On hand", "[@[Sealed film frames]]+[@[Short ends frames]]", l => l.OnHand, m => m.OnHand),
                Length(
                    "In camera",
                    $"SUMPRODUCT({OfThisLot}*(Film[Account]=\"SE\")*(Film[In camera]=\"yes\")*Film[Frames])",
                    l => l.InCamera,
                    m => m.InCamera
                ),
                Length("Left to shoot", "[@[On hand frames]]+[@[In camera frames]]", l => l.Left, m => m.Left),
                new("Unit price", CellFormat.Rate, 9, l => l.Lot.UnitPrice?.Value),
                new("Frames a unit", CellFormat.Frames, 8, l => l.Lot.Length.Value.Frames) { Aside = true },
                new("Received frames", CellFormat.Frames, 10, l => CellValue.Calculated("[@Units]*[@[Frames a unit]]", l.Received.Frames))
                {
                    Aside = true,
                },
                new("Came", CellFormat.Count, 6, l => CellValue.Calculated(Moved("came"), l.UnitsCame)) { Summed = true, Aside = true },
                new("Sent", CellFormat.Count, 6, l => CellValue.Calculated(Moved("sent-away"), l.UnitsSentAway))
                {
                    Summed = true,
                    Aside = true,
                },
                new("Lost", CellFormat.Count, 6, l => CellValue.Calculated($"{Moved("lost")}+{Moved("damaged")}", l.UnitsLost))
                {
                    Summed = true,
                    Aside = true,
                },
                new("Shot", CellFormat.Count, 6, l => CellValue.Calculated(Opened("<>"), l.UnitsLoaded)) { Summed = true, Aside = true },
                new("Practised", CellFormat.Count, 9, l => CellValue.Calculated(Opened("="), l.UnitsPractised))
                {
                    Summed = true,
                    Aside = true,
                },
                Beside(
                    "Sealed film",
                    $"[@[Received frames]]+{Change}-SUMPRODUCT(EXACT(Loads[Lot],[@Lot])*(Loads[From]=\"unit\")*Loads[Frames])",
                    l => l.Unopened
                ),
                Beside("Came film", Film("(StockLog[What]=\"came\")"), l => l.Came),
                Beside(
                    "Remeasured",
                    "SUMPRODUCT(EXACT(Loads[Lot],[@Lot])*(Loads[Frames held]-Loads[Frames]))",
                    l => l.Remeasured,
                    signed: true
                ) with
                {
                    Width = 12,
                },
                Beside("Practice", "SUMPRODUCT(EXACT(Loads[Lot],[@Lot])*(Loads[Use]=\"practice\")*Loads[Frames held])", l => l.Practice),
                Beside("Sent film", Film("(StockLog[What]=\"sent-away\")"), l => l.SentAway),
                Beside(
                    "Lost film",
                    Film(
                        "((StockLog[What]=\"lost\")+(StockLog[What]=\"damaged\")+(StockLog[What]=\"recanned\")+(StockLog[What]=\"split\"))"
                    ),
                    l => l.Lost
                ),
            ],
            source.Stock.Lots
        )
        {
            Finish = Short,
        };
    }

    public static TableSheet<StockLoad> Loads(LedgerSource source, WorkbookUnits units, WorkbookTerms say) =>
        new(
            "Loads",
            say["about.loads"],
            [
                new("Lot", CellFormat.Words, 22, l => l.Lot.Name.Value),
                new("Roll", CellFormat.Words, 12, l => l.Roll.Name.Value),
                new("From", CellFormat.Words, 12, l => l.IsUnit ? "unit" : "short end") { Allowed = Allowed.Only(["unit", "short end"]) },
                new("Unit", CellFormat.Count, 7, l => l.IsUnit ? l.Roll.Unit?.Value : null),
                new("Loaded on", CellFormat.Date, 11, l => (DateOnly?)DateOnly.FromDateTime(l.Roll.Load.On.Value)),
                new("For", CellFormat.Words, 10, l => For(l.Lot)) { Allowed = Fors },
                new("Of roll", CellFormat.Words, 8, l => l.Parent?.Name.Value),
                new("Use", CellFormat.Words, 9, l => l.Roll.IsPractice ? "practice"
                    : l.Book is null ? "unread"
                    : "shot") { Allowed = Allowed.Only(["shot", "practice", "unread"]) },
                new("Frames", CellFormat.Frames, 9, l => l.Said.Frames) { Summed = true },
                new("Frames held", CellFormat.Frames, 9, l => l.Held.Frames) { Summed = true },
                units.OfColumn<StockLoad>("Held", 9, "Frames held", l => l.Held),
            ],
            source.Stock.Loads
        );

    public static TableSheet<StockShortEnd> ShortEnds(LedgerSource source, WorkbookUnits units, WorkbookTerms say) =>
        new(
            "Short ends",
            say["about.short-ends"],
            [
                new("Lot", CellFormat.Words, 22, e => e.Lot.Name.Value),
                new("From roll", CellFormat.Words, 12, e => e.Parent.Name.Value),
                new("Name", CellFormat.Words, 12, e => e.Name),
                new("Kind", CellFormat.Words, 12, e => e.IsRecan ? "re-can" : "short end") { Codes = ["re-can", "short end"] },
                new("Piece", CellFormat.Count, 7, e => e.Piece) { Allowed = Allowed.From(1) },
                new("Made", CellFormat.Date, 11, e => (DateOnly?)e.Made),
                new("For", CellFormat.Words, 10, e => For(e.Lot)) { Allowed = Fors },
                new("Used as", CellFormat.Words, 8, e => e.UsedBy?.Name.Value),
                new("Used on", CellFormat.Date, 11, e =>
                    e.UsedBy is { } roll ? DateOnly.FromDateTime(roll.Load.On.Value) : (DateOnly?)null
                ),
                new("Frames", CellFormat.Frames, 9, e => e.Length.Frames) { Summed = true },
                units.OfColumn<StockShortEnd>("Length", 9, "Frames", e => e.Length),
                new("Off", CellFormat.Frames, 8, e =>
                    CellValue.Calculated(
                        $"-SUMPRODUCT({OfThisPiece}*((StockLog[What]=\"recanned\")+(StockLog[What]=\"split\"))*StockLog[Change])",
                        Off(source, e)
                    )
                )
                {
                    Summed = true,
                },
                new("On hand", CellFormat.Frames, 9, e =>
                    CellValue.Calculated($"IF([@[Used on]]<>\"\",0,[@Frames]+SUMPRODUCT({OfThisPiece}*StockLog[Change]))", e.OnHand.Frames)
                )
                {
                    Summed = true,
                },
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
                new("With", CellFormat.Words, 22, m => m.With),
                new("On", CellFormat.Date, 12, m => (DateOnly?)m.On),
                new("What", CellFormat.Words, 12, m => m.Entry.Word)
                {
                    Allowed = Allowed.Only(["came", "sent-away", "lost", "damaged", "recanned", "split"]),
                },
                new("Unit", CellFormat.Count, 7, m => m.Unit),
                new("Lot", CellFormat.Words, 11, m => m.Lot.Name.Value),
                new("For", CellFormat.Words, 10, m => For(m.Lot)) { Allowed = Fors },
                new("Short end of", CellFormat.Words, 8, m => m.ShortEndOf?.Name.Value),
                new("Piece", CellFormat.Count, 7, m => m.Piece),
                new("Frames", CellFormat.Frames, 9, m => m.Film.Frames),
                new("Counts", CellFormat.Words, 8, m => m.Counts ? "yes" : "no") { Allowed = Allowed.Only(FilmSheet.YesNo) },
                new("Change", CellFormat.Frames, 9, m =>
                    CellValue.Calculated("IF([@Counts]=\"yes\",IF([@What]=\"came\",1,-1)*[@Frames],0)", m.Change.Frames)
                )
                {
                    Summed = true,
                },
                new("Still so", CellFormat.Words, 8, m => m.Lasts ? "yes" : "no") { Allowed = Allowed.Only(FilmSheet.YesNo) },
                new("Fault", CellFormat.Words, 9, m => m.Fault is { } fault ? Codes.Of(fault) : default(CellValue))
                {
                    Codes = [.. Enum.GetValues<StockFault>().Select(Codes.Of)],
                },
                new("Note", CellFormat.Words, 9, m => m.Entry.Note?.Value),
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
    static string Film(string what) => $"SUMPRODUCT(EXACT(StockLog[Lot],[@Lot])*{what}*ABS(StockLog[Change]))";

    // The stock log's changes of units, in frames.
    const string Change = "SUMPRODUCT(EXACT(StockLog[Lot],[@Lot])*(StockLog[Short end of]=\"\")*StockLog[Change])";

    static string Opened(string practice) =>
        $"SUMPRODUCT(EXACT(Loads[Lot],[@Lot])*(Loads[From]=\"unit\")*(Loads[Use]{practice}\"practice\"))";

    public static string For(StockLot lot) => lot.Practice?.Value ?? false ? "practice" : "shoot";

    // A lot for shooting with nothing left to load.
    static void Short(WrittenTable table) => table.MarkWhere("On hand", "AND([@For]=\"shoot\",[@[On hand frames]]=0)", SheetWriter.Alarm);
}
