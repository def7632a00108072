using Spoolbook.Papers.Ledger;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Papers.Workbook;

/// <summary>Every take of the rolls that count.</summary>
static class TakesSheet
{
    public static TableSheet<(RollBook Roll, Layer Layer)> Of(LedgerSource source, WorkbookUnits units) => new(
        "Takes",
        "In the order in which they were shot, roll by roll. Film that ran through the camera twice is in two takes here, and once on the sheet Film.",
        [
            new("Roll", CellFormat.Words, 9, t => t.Roll.Roll.Name.Value),
            new("Day", CellFormat.Date, 11, t => (DateOnly?)t.Layer.On),
            new("Scene", CellFormat.Words, 8, t => t.Layer.Take.Scene.Value),
            new("Shot", CellFormat.Words, 6, t => t.Layer.Take.Shot?.Value),
            new("Take", CellFormat.Count, 6, t => t.Layer.Take.Number.Value),
            new("Mark", CellFormat.Words, 6, t => Codes.Of(t.Layer.Take.Mark.Value)),
            new("Pass", CellFormat.Count, 6, t => t.Layer.Pass),
            new("From frame", CellFormat.Frames, 8, t => t.Layer.Span.From.Frames),
            new("To frame", CellFormat.Frames, 8, t => t.Layer.Span.To.Frames),
            new("Frames", CellFormat.Frames, 9, t => CellValue.Calculated("[@[To frame]]-[@[From frame]]", t.Layer.Span.Length.Frames)) { Summed = true },
            new("From", CellFormat.Length, 10, t => CellValue.Calculated("[@[From frame]]/FramesPerUnit", units.Length(t.Layer.Span.From))),
            new("To", CellFormat.Length, 10, t => CellValue.Calculated("[@[To frame]]/FramesPerUnit", units.Length(t.Layer.Span.To))),
            new("Length", CellFormat.Length, 10, t => CellValue.Calculated("[@Frames]/FramesPerUnit", units.Length(t.Layer.Span.Length))) { Summed = true, Bars = true },
            new("Screen time", CellFormat.Clock, 8, t => CellValue.Calculated("[@Frames]/ProjectedAt/86400", units.ScreenTime(t.Layer.Span.Length))) { Summed = true },
            new("Speed", CellFormat.Plain, 7, t => (Film.Ratio?)t.Layer.Take.Speed.FramesPerSecond),
            new("Lens", CellFormat.Words, 8, t => t.Layer.Take.Lens?.Value),
            new("Stop", CellFormat.Words, 8, t => t.Layer.Take.Stop?.Value.ToString()),
            new("Filter", CellFormat.Words, 9, t => string.Join(" + ", t.Layer.Take.Filters.Select(f => f.Value))),
            new("Body", CellFormat.Words, 7, t => t.Layer.Body),
            new("Remarks", CellFormat.LongWords, 44, t => t.Layer.Take.Note?.Value),
        ],
        [.. source.Shoot.Counted.SelectMany(r => r.Layers.Select(l => (r, l)))]);
}
