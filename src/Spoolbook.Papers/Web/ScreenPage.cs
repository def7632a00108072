using System.Security;
using System.Text;
using Spoolbook.Digests;
using Spoolbook.Papers.Pages;

namespace Spoolbook.Papers.Web;

/// <summary>
/// A page that works by a script, in one file. It may fetch nothing and send nothing; the only style and script that run
/// are those whose digests are in its head.
/// </summary>
internal static class ScreenPage
{
    public static string Write(PageDocument document, string title, string language, string style, string script, string data)
    {
        // The digest is of the text between the tags, to the letter.
        var (look, act) = ("\n" + Lines(style), "\n" + Lines(script));
        return Lines(
            $"""
            <!DOCTYPE html>
            <html lang="{SecurityElement.Escape(language)}">
            <head>
            <meta charset="utf-8">
            <meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src '{Digest(look)}'; script-src '{Digest(
                act
            )}'; base-uri 'none'; form-action 'none'">
            <meta name="viewport" content="width=device-width, initial-scale=1">
            <meta name="color-scheme" content="light dark">
            <title>{SecurityElement.Escape(title)}</title>
            <style>{look}</style>
            <script>{act}</script>
            </head>
            <body>
            {document.ToHtml()}
            <script type="application/json" id="production">{data}</script>
            </body>
            </html>

            """
        );
    }

    static string Digest(string text) => "sha256-" + Convert.ToBase64String(Sha256.Of(Encoding.UTF8.GetBytes(text)));

    static string Lines(string text) => text.ReplaceLineEndings("\n");
}
