using Spoolbook.Papers.Ledger;
using Spoolbook.Papers.Wording;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Papers.Workbook;

/// <summary>Every take of the rolls that count.</summary>
static class TakesSheet
{
    // The first take of the same scene and shot. MATCH is fast, and its pattern characters are escaped.
    const string FirstOfShot =
        "MATCH(SUBSTITUTE(SUBSTITUTE(SUBSTITUTE([@[Scene and shot]],\"~\",\"~~\"),\"*\",\"~*\"),\"?\",\"~?\"),Takes[Scene and shot],0)";

    // 1 in the first take of a shot, so that the sum counts the shots. MATCH ignores case: where it found another shot,
    // or none, the rows from the first to this one are counted one by one.
    // A test is of no shot.
    const string NewShot =
        "IF([@Mark]=\"T\",0,IF(IFERROR(EXACT(INDEX(Takes[Scene and shot],"
        + FirstOfShot
        + "),[@[Scene and shot]]),FALSE),"
        + "IF("
        + FirstOfShot
        + "=ROW()-ROW(INDEX(Takes[Scene and shot],1))+1,1,0),"
        + "IF(SUMPRODUCT(EXACT(INDEX(Takes[Scene and shot],1):[@[Scene and shot]],[@[Scene and shot]])*1)=1,1,0)))";

    // A stretch of the film is in a take as a whole, or not at all.
    const string GoodFrames =
        "SUMPRODUCT(EXACT(Film[Roll],[@Roll])*(Film[From]>=[@[From frame]])*(Film[To]<=[@[To frame]])"
        + "*(Film[Account]=\"G\")*Film[Frames])";

    public static TableSheet<(RollBook Roll, Layer Layer)> Of(LedgerSource source, WorkbookUnits units, WorkbookTerms say)
    {
        var takes = source.Shoot.Counted.SelectMany(r => r.Layers.Select(l => (Roll: r, Layer: l))).ToList();
        var firsts = takes
            .Select(t => t.Layer)
            .Where(l => !l.Take.IsTest)
            .DistinctBy(l => l.Take.ShotName)
            .ToHashSet<Layer>(ReferenceEqualityComparer.Instance);
        return new("Takes", say["about.takes"], Columns(source.Shoot.Production, units, say, firsts.Contains), takes);
    }

    /// <summary>The columns. Typed takes are read back by their heads.</summary>
    /// <param name="isNew">Whether a take is the first of its shot.</param>
    public static Column<(RollBook Roll, Layer Layer)>[] Columns(
        Production production,
        WorkbookUnits units,
        WorkbookTerms say,
        Func<Layer, bool> isNew
    ) =>
        [
            new("Roll", CellFormat.Words, 6, t => t.Roll.Roll.Name.Value)
            {
                Allowed = Allowed.Names(production.Rolls.Select(r => r.Name.Value)),
            },
            new("Day", CellFormat.Date, 11, t => (DateOnly?)t.Layer.On),
            new("Scene", CellFormat.Words, 6, t => t.Layer.Take.Scene.Value),
            new("Shot", CellFormat.Words, 5, t => t.Layer.Take.Shot?.Value),
            new("Take", CellFormat.Count, 6, t => t.Layer.Take.Number.Value) { Allowed = Allowed.From(1) },
            new("Mark", CellFormat.Words, 5.5, t => Codes.Of(t.Layer.Take.Mark.Value))
            {
                Allowed = Allowed.Only(Enum.GetValues<Mark>().Select(Codes.Of)),
            },
            new("Pass", CellFormat.Count, 5, t => t.Layer.Pass) { Allowed = Allowed.From(1) },
            units.OfColumn<(RollBook Roll, Layer Layer)>("From", 8, "From frame", t => t.Layer.Span.From) with
            {
                Summed = false,
            },
            units.OfColumn<(RollBook Roll, Layer Layer)>("To", 8, "To frame", t => t.Layer.Span.To) with
            {
                Summed = false,
            },
            units.OfColumn<(RollBook Roll, Layer Layer)>("Length", 8, "Frames", t => t.Layer.Span.Length),
            new("Screen time", CellFormat.Clock, 7, t =>
                CellValue.Calculated("[@Frames]/ProjectedAt/86400", units.ScreenTime(t.Layer.Span.Length))
            )
            {
                Summed = true,
                Bars = true,
            },
            new("Speed", CellFormat.Plain, 7, t => (Film.Ratio?)t.Layer.Take.Speed.FramesPerSecond),
            new("Lens", CellFormat.Words, 7, t => t.Layer.Take.Lens?.Value)
            {
                Allowed = Allowed.Names(production.Lenses.Select(l => l.Name.Value)),
            },
            new("Stop", CellFormat.Words, 7, t => t.Layer.Take.Stop?.Value.ToString()),
            new("Focus", CellFormat.Words, 8, t => Focus(t.Layer.Take, say.FormatFor(production))),
            new("Filter", CellFormat.Words, 8, t => string.Join(" + ", t.Layer.Take.Filters.Select(f => f.Value))),
            new("Body", CellFormat.Words, 6, t => t.Layer.Body) { Allowed = Allowed.Names(production.Bodies.Select(b => b.Name.Value)) },
            new("Remarks", CellFormat.LongWords, 27, t => t.Layer.Take.Note?.Value),
            new("From frame", CellFormat.Frames, 8, t => t.Layer.Span.From.Frames) { Allowed = Allowed.From(0), Aside = true },
            new("To frame", CellFormat.Frames, 8, t => t.Layer.Span.To.Frames) { Allowed = Allowed.From(0), Aside = true },
            new("Frames", CellFormat.Frames, 9, t => CellValue.Calculated("[@[To frame]]-[@[From frame]]", t.Layer.Span.Length.Frames))
            {
                Summed = true,
                Aside = true,
            },
            new("Scene and shot", CellFormat.Words, 9, t =>
                CellValue.CalculatedWords("IF([@Mark]=\"T\",\"\",[@Scene]&[@Shot])", t.Layer.Take.IsTest ? "" : t.Layer.Take.ShotName)
            )
            {
                Aside = true,
            },
            new("Good frames", CellFormat.Frames, 9, t => CellValue.Calculated(GoodFrames, t.Roll.Strip.GoodFilmOf(t.Layer).Frames))
            {
                Aside = true,
            },
            new("New shot", CellFormat.Count, 7, t => CellValue.Calculated(NewShot, isNew(t.Layer) ? 1 : 0))
            {
                Summed = true,
                Aside = true,
            },
        ];

    // As it was written, so that it can be read back.
    static string? Focus(Take take, PaperFormat format) =>
        take.Focus is { } focus ? focus.Value.Written ?? format.Focus(focus.Value) : null;
}
