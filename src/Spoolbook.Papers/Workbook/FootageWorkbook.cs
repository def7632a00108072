using ClosedXML.Excel;
using Spoolbook.Papers.Ledger;

namespace Spoolbook.Papers.Workbook;

/// <summary>
/// The footage workbook: what a producer opens every evening. Every total and ratio is a live formula over
/// one list of all the film, and comes to what the other papers say.
/// </summary>
public static class FootageWorkbook
{
    /// <summary>The workbook as a file: the same bytes for the same books.</summary>
    public static byte[] Make(LedgerSource source)
    {
        var caches = new Caches();
        using var book = new XLWorkbook();
        Fill(book, caches, source);
        using var saved = new MemoryStream();
        book.SaveAs(saved);
        return WorkbookFinish.Of(saved, caches, source.Made);
    }

    /// <summary>What stands where in the workbook of some books.</summary>
    internal static WorkbookNotes Notes(LedgerSource source)
    {
        using var book = new XLWorkbook();
        return Fill(book, new Caches(), source);
    }

    static WorkbookNotes Fill(XLWorkbook book, Caches caches, LedgerSource source)
    {
        var production = source.Shoot.Production;
        var units = new WorkbookUnits(production);
        Describe(book, source);

        var writer = new SheetWriter(book, caches, new CellFormats(units.LengthFormat), production, production.Title.Value);
        new SummarySheet(source, units, writer, book).Write();
        RollsSheet.Of(source, units).Write(writer);
        TakesSheet.Of(source, units).Write(writer);
        DaysSheet.Of(source, units).Write(writer);
        PartSheets.Scenes(source, units).Write(writer);
        ShotsSheet.Of(source, units).Write(writer);
        PartSheets.Lots(source, units).Write(writer);
        PartSheets.Bodies(source, units).Write(writer);
        StockSheets.Lots(source, units).Write(writer);
        StockSheets.Loads(source, units).Write(writer);
        StockSheets.ShortEnds(source, units).Write(writer);
        StockSheets.Log(source).Write(writer);
        CostSheet.Of(source).Write(writer);
        ForecastSheet.Of(source, units).Write(writer);
        FindingsSheet.Of(source).Write(writer);
        FilmSheet.Of(source, units).Write(writer);

        return writer.Notes;
    }

    static void Describe(XLWorkbook book, LedgerSource source)
    {
        var production = source.Shoot.Production;
        var made = source.Made.ToDateTime(TimeOnly.MinValue, DateTimeKind.Utc);
        book.Author = "Spoolbook";
        book.Properties.Author = "Spoolbook";
        book.Properties.LastModifiedBy = "Spoolbook";
        book.Properties.Title = $"{production.Title.Value}: footage workbook";
        book.Properties.Subject = production.Code.Value;
        book.Properties.Created = made;
        book.Properties.Modified = made;
    }
}
