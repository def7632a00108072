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

    // Pages, from which on what laying them out leaves behind counts by the megabyte.
    const int LongPaper = 30;

    public static PdfResult Render(PageDocument document, PageSetup setup, PdfMeta meta)
    {
        var warnings = new WarningBook(document);
        var pdf = new PdfDocument(
            new DocumentIdentity(Printable(meta.Title), Printable(meta.Author), meta.Language, meta.Made, Producer, Accessible: true)
        );
        var (width, height) = setup.Size;
        var capacity = height - 2 * setup.EndMargin - PageFurniture.HeadHeight - PageFurniture.FootHeight;

        // A page is let go once it is drawn.
        var pages = new Queue<LaidPage>(Fit(document, setup, capacity, warnings, pdf.Root));
        var count = pages.Count;
        GiveBack();

        var furniture = new PageFurniture(setup, warnings);
        var headings = new Headings();
        for (var number = 1; pages.TryDequeue(out var laid); number++)
        {
            var page = pdf.AddPage(width, height);
            var painter = new Painter(page);
            var top = laid.WholePage ? 0 : setup.EndMargin + PageFurniture.HeadHeight;
            if (!laid.WholePage)
            {
                foreach (var piece in furniture.Draw(number, count, laid.IsTitled))
                {
                    painter.Draw(piece, 0, 0);
                }
            }
            foreach (var (piece, y) in laid.Pieces)
            {
                painter.Draw(piece, 0, top + y);
                headings.See(piece, page, top + y, laid.WholePage);
            }
            foreach (var (name, y) in laid.Names)
            {
                page.Name(name, top + y);
            }
        }
        headings.WriteOutline();
        GiveBack();
        return new PdfResult(pdf.Save(), count, warnings.Warnings);

        void GiveBack()
        {
            if (count > LongPaper)
            {
                GC.Collect(GC.MaxGeneration, GCCollectionMode.Aggressive, blocking: true, compacting: true);
            }
        }
    }

    /// <summary>
    /// Set as usual, or just tight enough to bring onto the first page what should be there, or to save a nearly empty last
    /// page, or with the white of the last page given to the tables that ask for it. Attempts that are not drawn leave no
    /// trace in the structure.
    /// </summary>
    static IReadOnlyList<LaidPage> Fit(PageDocument document, PageSetup setup, double capacity, WarningBook warnings, StructureElement root)
    {
        var (usual, _) = Lay(document, setup, Tightness.Usual(setup), capacity, warnings, root);
        if (MissesFront(usual))
        {
            var front = Tightness.Tighter(setup, TableSizeOf(document)).Select(Again).FirstOrDefault(other => !MissesFront(other.Pages));
            if (front.Pages is not null)
            {
                return front.Pages;
            }
        }

        var others = Tightness.IsWorthwhile(usual, capacity)
            ? Tightness.Tighter(setup, TableSizeOf(document)).Select(Again).Where(other => other.Pages.Count < usual.Count)
            : Tightness
                .Larger(setup, usual, capacity, FittedRows(document))
                .Select(Again)
                .Where(other => other.Pages.Count <= usual.Count && !other.IsCrowded);
        return others.Select(other => other.Pages).FirstOrDefault() ?? usual;

        (IReadOnlyList<LaidPage> Pages, bool IsCrowded) Again(Tightness tightness) =>
            Lay(document, setup, tightness, capacity, new WarningBook(document), root);
    }

    static bool MissesFront(IReadOnlyList<LaidPage> pages) => pages.Skip(1).Any(page => page.HasFront);

    static double TableSizeOf(PageDocument document) =>
        document.Root.Descendants().Any(e => e.HasClass("compact") || e.HasClass("fitted")) ? Styles.CompactSize : Styles.TableSize;

    static int FittedRows(PageDocument document) =>
        document.Root.Descendants().Where(e => e.HasClass("fitted")).Sum(table => table.Descendants().Count(e => e.Is("tr")));

    static (IReadOnlyList<LaidPage> Pages, bool IsCrowded) Lay(
        PageDocument document,
        PageSetup setup,
        Tightness tightness,
        double capacity,
        WarningBook warnings,
        StructureElement root
    )
    {
        var galley = new Galley(tightness.Spacing);
        var composer = new BlockComposer(setup, warnings, root) { Spacing = tightness.Spacing, Fitted = tightness.Fitted };
        var text = Styles.Body with { Size = Styles.Body.Size * tightness.Scale };
        composer.Content(document.Root, new Scope(setup.Margin, setup.Size.Width - 2 * setup.Margin, capacity, text, root), galley);
        return (Paginator.Paginate(galley.Slices, capacity, PageFurniture.HeadRoom(setup)), composer.IsCrowded);
    }

    /// <summary>A title goes into XML too, which does not allow control characters.</summary>
    static string Printable(string text) =>
        new([.. text.EnumerateRunes().SelectMany(rune => (System.Text.Rune.IsControl(rune) ? " " : rune.ToString()))]);
}
