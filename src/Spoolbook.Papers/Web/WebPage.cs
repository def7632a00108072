using System.Security;
using System.Xml.Linq;
using Spoolbook.Papers.Pages;

namespace Spoolbook.Papers.Web;

/// <summary>A paper as a self-contained web page: no script, no file, no network.</summary>
internal static class WebPage
{
    public static string Write(PageDocument document, string title, string language, string style) =>
        $"""
            <!DOCTYPE html>
            <html lang="{SecurityElement.Escape(language)}">
            <head>
            <meta charset="utf-8">
            <meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'; img-src data:">
            <meta name="viewport" content="width=device-width, initial-scale=1">
            <title>{SecurityElement.Escape(title)}</title>
            <style>
            {style}</style>
            </head>
            <body>
            {document.ToHtml(Finish)}
            </body>
            </html>

            """.ReplaceLineEndings("\n");

    // Hints first: the width of a table depends on what must not be broken.
    static void Finish(XElement article)
    {
        ColumnHints.Carry(article);
        NarrowTables.Prepare(article);
    }
}
