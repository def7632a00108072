using Spoolbook.Papers.Tests.Pages;
using Spoolbook.Papers.Typesetting;
using Spoolbook.Papers.Typesetting.Setup;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace Spoolbook.Papers.Tests.Typesetting;

/// <summary>Pages printed for a test, and read back by an outside reader.</summary>
static class Printed
{
    public static readonly PdfMeta Meta = new(
        "Camera report R03",
        "Second assistant",
        "en",
        new DateTimeOffset(2026, 10, 4, 17, 30, 0, TimeSpan.FromHours(2))
    );

    public static PdfResult Of(string article, PageSetup? setup = null, object? facts = null) =>
        PdfRenderer.Render(Templates.Page("<article>" + article + "</article>", facts), setup ?? new PageSetup(Paper.Letter), Meta);

    public static PdfDocument Read(PdfResult pdf) => PdfDocument.Open(pdf.Bytes);

    /// <summary>The letters of a page in drawing order, without the page's furniture.</summary>
    public static IEnumerable<Letter> BodyLetters(Page page)
    {
        double edge = (page.Width < 300 ? 20 : 40) + 10;
        return page.Letters.Where(l => l.StartBaseLine.Y < page.Height - edge && l.StartBaseLine.Y > edge);
    }

    public static string Body(Page page) => string.Concat(BodyLetters(page).Select(l => l.Value)).Trim();

    /// <summary>A table of one row for each text, its number first.</summary>
    public static string Table(IEnumerable<string> rows, string head = "<thead><tr><th>Take</th><th>Remarks</th></tr></thead>") =>
        "<table><colgroup><col class=\"num\"/><col/></colgroup>"
        + head
        + "<tbody>"
        + string.Concat(rows.Select((text, i) => FormattableString.Invariant($"<tr><td>{i + 1}</td><td>{text}</td></tr>")))
        + "</tbody></table>";
}
