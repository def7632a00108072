using System.Security;
using System.Xml.Linq;
using Spoolbook.Papers.Pages;
using Spoolbook.Papers.Typesetting.Setup;

namespace Spoolbook.Papers.Web;

/// <summary>A paper as a self-contained web page: no script, no file, no network.</summary>
internal static class WebPage
{
    // Put together in one step, as a page of a long shoot has some megabytes.
    public static string Write(PageDocument document, string title, string language, string style, PageSetup setup) =>
        string.Concat(
            Begin(title, language),
            (style + PrintedPage.Style(document, setup)).ReplaceLineEndings("\n"),
            "</style>\n</head>\n<body>\n<main>\n",
            document.ToHtml(article => Finish(article, setup)).ReplaceLineEndings("\n") + "\n</main>\n</body>\n</html>\n"
        );

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
