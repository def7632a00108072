using System.Globalization;
using System.Text;
using Spoolbook.Papers.Pages;
using Spoolbook.Papers.Typesetting.Setup;

namespace Spoolbook.Papers.Web;

/// <summary>The sheet that a browser prints a page on: the size, the margins, and the PDF's running head and foot.</summary>
internal static class PrintedPage
{
    // Less than the PDF's, as a browser's lines are less tight. Every printer reaches 9 mm.
    const string Margins = "13mm 11mm 12mm";

    public static string Style(PageDocument document, PageSetup setup)
    {
        var (width, height) = setup.Size;
        var size = string.Create(CultureInfo.InvariantCulture, $"{width:0.##}pt {height:0.##}pt");
        return document.Root.Descendants().Any(e => e.Is("section") && e.HasClass("sheet"))
            ? $"@page {{ size: {size}; margin: 0; }}\n"
            : $$"""
                @page {
                  size: {{size}};
                  margin: {{Margins}};
                  font: 7pt Inter, "Helvetica Neue", Arial, "Liberation Sans", sans-serif;
                  @top-left { content: {{Quoted(setup.HeadLeft)}}; }
                  @top-right { content: {{Quoted(setup.HeadRight)}}; }
                  @bottom-left { content: {{Quoted(setup.FootLeft)}}; }
                  @bottom-right { content: {{PageOf(setup.Words.PageOf)}}; }
                }
                @page :first { @top-left { content: none; } @top-right { content: none; } }
                @page titled { @top-left { content: none; } @top-right { content: none; } }

                """;
    }

    // "Page {0} of {1}" as a browser counts.
    static string PageOf(string words) =>
        string.Join(
            ' ',
            words
                .Replace("{0}", "\n0\n", StringComparison.Ordinal)
                .Replace("{1}", "\n1\n", StringComparison.Ordinal)
                .Split('\n')
                .Select(part =>
                    part switch
                    {
                        "0" => "counter(page)",
                        "1" => "counter(pages)",
                        _ => Quoted(part),
                    }
                )
        );

    // A title can hold whatever ends a text, a rule or the style sheet, so only letters, digits and blanks are as written.
    static string Quoted(string text)
    {
        var quoted = new StringBuilder("\"");
        foreach (var rune in text.EnumerateRunes())
        {
            quoted.Append(
                Rune.IsLetterOrDigit(rune) || rune.Value == ' ' ? rune.ToString()
                : Rune.IsControl(rune) ? " "
                : string.Create(CultureInfo.InvariantCulture, $"\\{rune.Value:x6}")
            );
        }

        return quoted.Append('"').ToString();
    }
}
