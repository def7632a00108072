using Spoolbook.Papers.Pages;
using Spoolbook.Papers.Typesetting.Drawing;
using Spoolbook.Papers.Typesetting.Layout;
using Spoolbook.Papers.Typesetting.Setting;
using Spoolbook.Papers.Typesetting.Setup;
using Spoolbook.Pdf.Documents;
using Spoolbook.Pdf.Structure;

namespace Spoolbook.Papers.Typesetting;

/// <summary>Sets a page of the vocabulary as a tagged, archival PDF. Calls share nothing but the fonts.</summary>
public static class PdfRenderer
{
    const string Producer = "Spoolbook";

    public static PdfResult Render(PageDocument document, PageSetup setup, PdfMeta meta)
    {
        var warnings = new WarningBook(document);
        var pdf = new PdfDocument(
            new DocumentIdentity(Printable(meta.Title), Printable(meta.Author), meta.Language, meta.Made, Producer, Accessible: true)
        );
        var (width, height) = setup.Size;
        var capacity = height - 2 * setup.EndMargin - PageFurniture.HeadHeight - PageFurniture.FootHeight;

        var pages = Fit(document, setup, capacity, warnings, pdf.Root);

        var furniture = new PageFurniture(setup, warnings);
        var headings = new Headings();
        for (var i = 0; i < pages.Count; i++)
        {
            var page = pdf.AddPage(width, height);
            var painter = new Painter(page);
            var top = pages[i].WholePage ? 0 : setup.EndMargin + PageFurniture.HeadHeight;
            if (!pages[i].WholePage)
            {
                foreach (var piece in furniture.Draw(i + 1, pages.Count))
                {
                    painter.Draw(piece, 0, 0);
                }
            }
            foreach (var (piece, y) in pages[i].Pieces)
            {
                painter.Draw(piece, 0, top + y);
                headings.See(piece, page, top + y, pages[i].WholePage);
            }
            foreach (var (name, y) in pages[i].Names)
            {
                page.Name(name, top + y);
            }
        }
        headings.WriteOutline();
        return new PdfResult(pdf.Save(), pages.Count, warnings.Warnings);
    }

    /// <summary>
    /// Set as usual, or just tight enough to save a nearly empty last page. Attempts that are not drawn leave no trace
    /// in the structure.
    /// </summary>
    static IReadOnlyList<LaidPage> Fit(PageDocument document, PageSetup setup, double capacity, WarningBook warnings, StructureElement root)
    {
        var usual = Lay(document, setup, Tightness.Usual(setup), capacity, warnings, root);
        return Tightness.IsWorthwhile(usual, capacity)
            ? Tightness
                .Tighter(setup)
                .Select(tighter => Lay(document, setup, tighter, capacity, new WarningBook(document), root))
                .FirstOrDefault(pages => pages.Count < usual.Count)
                ?? usual
            : usual;
    }

    static IReadOnlyList<LaidPage> Lay(
        PageDocument document,
        PageSetup setup,
        Tightness tightness,
        double capacity,
        WarningBook warnings,
        StructureElement root
    )
    {
        var galley = new Galley(tightness.Spacing);
        var composer = new BlockComposer(setup, warnings, root) { Spacing = tightness.Spacing };
        var text = Styles.Body with { Size = Styles.Body.Size * tightness.Scale };
        composer.Content(document.Root, new Scope(setup.Margin, setup.Size.Width - 2 * setup.Margin, capacity, text, root), galley);
        return Paginator.Paginate(galley.Slices, capacity);
    }

    /// <summary>A title goes into XML too, which does not allow control characters.</summary>
    static string Printable(string text) =>
        new([.. text.EnumerateRunes().SelectMany(rune => (System.Text.Rune.IsControl(rune) ? " " : rune.ToString()))]);
}
