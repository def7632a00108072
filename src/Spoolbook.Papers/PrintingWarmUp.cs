using ClosedXML.Excel;
using Spoolbook.Papers.Pages;
using Spoolbook.Papers.Typesetting;
using Spoolbook.Papers.Typesetting.Setup;
using Spoolbook.Papers.Web;

namespace Spoolbook.Papers;

/// <summary>
/// What printing loads once, loaded while another core still reads the record: fonts, the engine of templates, and the tables that the
/// workbook's library makes when it first saves. Nothing of it is kept but that, and nothing depends on it.
/// </summary>
public static class PrintingWarmUp
{
    const string Template = """
        <article><h1>{{ title }}</h1><p>{{ words | array.join ', ' }}</p>
        <table class="grid"><thead><tr><th scope="col">{{ title }}</th></tr></thead>
        <tbody>{{ for word in words }}<tr><td class="number"><strong>{{ word }}</strong></td></tr>{{ end }}</tbody></table></article>
        """;

    static readonly string[] _words = ["31+12", "film"];

    /// <summary>Begins to load. A process that ends first does not wait for it.</summary>
    public static void Start()
    {
        if (Environment.ProcessorCount > 1)
        {
            _ = Task.Run(Load);
        }
    }

    static void Load()
    {
        try
        {
            SaveWorkbook();
            SetPage();
        }
        catch (Exception)
        {
            // What cannot be loaded fails again where it is wanted, and is told there.
        }
    }

    static void SaveWorkbook()
    {
        using var book = new XLWorkbook();
        var sheet = book.AddWorksheet("A");
        sheet.Cell(1, 1).SetValue("A");
        sheet.Cell(2, 1).SetValue(1.5);
        sheet.Cell(2, 1).Style.NumberFormat.Format = "0.0";
        sheet.Cell(2, 1).Style.Alignment.Horizontal = XLAlignmentHorizontalValues.Right;
        sheet.Cell(1, 1).Style.Font.SetBold().Fill.SetBackgroundColor(XLColor.FromHtml("#E8EDF2"));
        sheet.Cell(3, 1).FormulaA1 = "SUM(A[A])";
        sheet.Range(1, 1, 2, 1).CreateTable("A").Theme = XLTableTheme.TableStyleLight1;
        sheet.PageSetup.Footer.Right.AddText(XLHFPredefinedText.PageNumber);
        using var saved = new MemoryStream();
        book.SaveAs(saved, new SaveOptions { GenerateCalculationChain = false });
    }

    static void SetPage()
    {
        var result = TemplateEngine.Render(new OneTemplate(), "page.html", new { Title = "A", Words = _words });
        if (result.Document is { } document)
        {
            var setup = new PageSetup(Paper.A4);
            PdfRenderer.Render(document, setup, new PdfMeta("A", "A", "en", DateTimeOffset.UnixEpoch));
            WebPage.Write(document, "A", "en", "", setup);
        }
    }

    sealed class OneTemplate : ITemplateSource
    {
        public TemplateText? Find(string name) => new(name, Template);
    }
}
