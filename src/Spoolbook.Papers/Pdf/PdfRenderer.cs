using Spoolbook.Papers.Pages;
using Spoolbook.Papers.Pdf.Drawing;
using Spoolbook.Papers.Pdf.Layout;
using Spoolbook.Papers.Pdf.Setting;
using Spoolbook.Press.Documents;

namespace Spoolbook.Papers.Pdf;

/// <summary>Sets a page of the vocabulary as a tagged, archival PDF. Nothing is shared between two calls but the fonts.</summary>
public static class PdfRenderer
{
    const string Producer = "Spoolbook";

    public static PdfResult Render(PageDocument document, PageSetup setup, PdfMeta meta)
    {
        var warnings = new WarningBook(document);
        var pdf = new PdfDocument(new DocumentIdentity(Printable(meta.Title), Printable(meta.Author), meta.Language, meta.Made, Producer, Accessible: true));
        var (width, height) = setup.Size;
        double capacity = height - 2 * setup.EndMargin - PageFurniture.HeadHeight - PageFurniture.FootHeight;

        var galley = new Galley(setup.Scale);
        var composer = new BlockComposer(setup, warnings, pdf.Root) { Spacing = setup.Scale };
        var text = Styles.Body with { Size = Styles.Body.Size * setup.Scale };
        composer.Content(document.Root, new Scope(setup.Margin, width - 2 * setup.Margin, capacity, text, pdf.Root), galley);
        var pages = Paginator.Paginate(galley.Slices, capacity);

        var furniture = new PageFurniture(setup, warnings);
        for (int i = 0; i < pages.Count; i++)
        {
            var painter = new Painter(pdf.AddPage(width, height));
            double top = pages[i].WholePage ? 0 : setup.EndMargin + PageFurniture.HeadHeight;
            if (!pages[i].WholePage)
            {
                foreach (var piece in furniture.Draw(i + 1, pages.Count)) painter.Draw(piece, 0, 0);
            }
            foreach (var (piece, y) in pages[i].Pieces) painter.Draw(piece, 0, top + y);
        }
        return new PdfResult(pdf.Save(), pages.Count, warnings.Warnings);
    }

    /// <summary>A title goes into XML too, which holds no control characters.</summary>
    static string Printable(string text) =>
        new([.. text.EnumerateRunes().SelectMany(rune => (System.Text.Rune.IsControl(rune) ? " " : rune.ToString()))]);
}
