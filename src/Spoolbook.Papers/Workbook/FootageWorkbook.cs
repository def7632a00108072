using ClosedXML.Excel;
using Spoolbook.Papers.Ledger;
using Spoolbook.Papers.Wording;

namespace Spoolbook.Papers.Workbook;

/// <summary>
/// The footage workbook: what a producer opens every evening. Every total and ratio is a live formula over one list of
/// all the film, with the same result as on the other papers.
/// </summary>
public static class FootageWorkbook
{
    /// <summary>The workbook as a file: the same bytes for the same books.</summary>
    /// <param name="words">The words of the production's language.</param>
    /// <exception cref="UnfitWordException">A word cannot be used where the workbook needs it.</exception>
    public static byte[] Make(LedgerSource source, Translations words)
    {
        var say = new WorkbookTerms(words);
        return Make(WorkbookSheets.Of(source, say), source, say);
    }

    /// <summary>The file of some described sheets.</summary>
    internal static byte[] Make(WorkbookSheets sheets, LedgerSource source, WorkbookTerms say)
    {
        var caches = new Caches();
        using var saved = new MemoryStream();
        var charts = Save(sheets, caches, source, say, saved);
        LongShoot.GiveBack(source.Shoot);
        return WorkbookFinish.Apply(saved, caches, charts, source.Made);
    }

    // By itself, so that the library's book, which is far larger than the file, is gone when the file is finished.
    static List<BookChart> Save(WorkbookSheets sheets, Caches caches, LedgerSource source, WorkbookTerms say, MemoryStream to)
    {
        using var book = new XLWorkbook();
        var writer = Fill(book, caches, sheets, source, say);
        LongShoot.GiveBack(source.Shoot);
        book.SaveAs(to, new SaveOptions { GenerateCalculationChain = false });
        return writer.Charts;
    }

    /// <summary>What is where in the workbook of some books.</summary>
    internal static WorkbookNotes Notes(LedgerSource source, WorkbookTerms say)
    {
        using var book = new XLWorkbook();
        return Fill(book, new Caches(), WorkbookSheets.Of(source, say), source, say).Notes;
    }

    static SheetWriter Fill(XLWorkbook book, Caches caches, WorkbookSheets sheets, LedgerSource source, WorkbookTerms say)
    {
        var production = source.Shoot.Production;
        Describe(book, source, say);

        var units = new WorkbookUnits(production);
        var writer = new SheetWriter(book, caches, units, production, say);
        var places = sheets.Answers.Write(writer);
        foreach (var page in sheets.Pages)
        {
            page.Write(writer);
        }

        sheets.Figures.Write(writer);
        writer.Charts.AddRange(BookCharts.Of(source, units, writer, places));
        return writer;
    }

    static void Describe(XLWorkbook book, LedgerSource source, WorkbookTerms say)
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
