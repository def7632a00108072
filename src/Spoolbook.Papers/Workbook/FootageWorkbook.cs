using ClosedXML.Excel;
using Spoolbook.Papers.Ledger;
using Spoolbook.Papers.Wording;

namespace Spoolbook.Papers.Workbook;

/// <summary>
/// The footage workbook: what a producer opens every evening. Every total and ratio is a live formula over
/// one list of all the film, and comes to what the other papers say.
/// </summary>
public static class FootageWorkbook
{
    /// <summary>The workbook as a file: the same bytes for the same books.</summary>
    /// <param name="words">The words of the production's language.</param>
    /// <exception cref="UnfitWordException">A word cannot stand where the workbook needs it.</exception>
    public static byte[] Make(LedgerSource source, Translations words)
    {
        var caches = new Caches();
        using var book = new XLWorkbook();
        Fill(book, caches, source, new WorkbookWords(words));
        using var saved = new MemoryStream();
        book.SaveAs(saved);
        return WorkbookFinish.Of(saved, caches, source.Made);
    }

    /// <summary>What stands where in the workbook of some books.</summary>
    internal static WorkbookNotes Notes(LedgerSource source, WorkbookWords say)
    {
        using var book = new XLWorkbook();
        return Fill(book, new Caches(), source, say);
    }

    static WorkbookNotes Fill(XLWorkbook book, Caches caches, LedgerSource source, WorkbookWords say)
    {
        var production = source.Shoot.Production;
        var units = new WorkbookUnits(production);
        Describe(book, source, say);

        var writer = new SheetWriter(book, caches, new CellFormats(units.LengthFormat), production, say);
        new SummarySheet(source, units, writer, book).Write();
        RollsSheet.Of(source, units, say).Write(writer);
        TakesSheet.Of(source, units, say).Write(writer);
        DaysSheet.Of(source, units, say).Write(writer);
        PartSheets.Scenes(source, units, say).Write(writer);
        ShotsSheet.Of(source, units, say).Write(writer);
        PartSheets.Lots(source, units, say).Write(writer);
        PartSheets.Bodies(source, units, say).Write(writer);
        StockSheets.Lots(source, units, say).Write(writer);
        StockSheets.Loads(source, units, say).Write(writer);
        StockSheets.ShortEnds(source, units, say).Write(writer);
        StockSheets.Log(source, say).Write(writer);
        CostSheet.Of(source, say).Write(writer);
        ForecastSheet.Of(source, units, say).Write(writer);
        FindingsSheet.Of(source, say).Write(writer);
        FilmSheet.Of(source, units, say).Write(writer);

        return writer.Notes;
    }

    static void Describe(XLWorkbook book, LedgerSource source, WorkbookWords say)
    {
        var production = source.Shoot.Production;
        var made = source.Made.ToDateTime(TimeOnly.MinValue, DateTimeKind.Utc);
        book.Author = "Spoolbook";
        book.Properties.Author = "Spoolbook";
        book.Properties.LastModifiedBy = "Spoolbook";
        book.Properties.Title = $"{production.Title.Value}: {say["title"]}";
        book.Properties.Subject = production.Code.Value;
        book.Properties.Created = made;
        book.Properties.Modified = made;
    }
}
