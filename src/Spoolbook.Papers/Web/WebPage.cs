using System.Security;
using System.Text;
using System.Xml.Linq;
using Spoolbook.Papers.Pages;
using Spoolbook.Papers.Typesetting.Setup;

namespace Spoolbook.Papers.Web;

/// <summary>A paper as a self-contained web page: no script, no file, no network.</summary>
internal static class WebPage
{
    /// <summary>The file of a page. The document is used up: whatever else is made of it comes first.</summary>
    public static byte[] Write(PageDocument document, string title, string language, string style, PageSetup setup)
    {
        using var page = new MemoryStream();
        page.Write(Encoding.UTF8.GetBytes(Begin(title, language)));
        page.Write(Encoding.UTF8.GetBytes((style + PrintedPage.Style(document, setup)).ReplaceLineEndings("\n")));
        page.Write("</style>\n</head>\n<body>\n<main>\n"u8);
        document.WriteHtml(page, article => Finish(article, setup));
        page.Write("\n</main>\n</body>\n</html>\n"u8);
        return page.ToArray();
    }

    static string Begin(string title, string language) =>
        $"""
            <!DOCTYPE html>
            <html lang="{SecurityElement.Escape(language)}">
            <head>
            <meta charset="utf-8">
            <meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'; img-src data:">
            <meta name="viewport" content="width=device-width, initial-scale=1">
            <title>{SecurityElement.Escape(title)}</title>
            <style>

            """.ReplaceLineEndings("\n");

    // Hints first: the width of a table depends on what must not be broken.
    static void Finish(XElement article, PageSetup setup)
    {
        ColumnHints.Carry(article);
        NarrowTables.Prepare(article);
        PrintedSheets.Prepare(article, setup);
        Scrolling.Prepare(article);
    }
}
