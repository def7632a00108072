using System.Globalization;
using System.Xml.Linq;
using Spoolbook.Papers.Pages;
using Spoolbook.Papers.Typesetting.Drawing;
using Spoolbook.Pdf.Structure;

namespace Spoolbook.Papers.Typesetting.Layout;

/// <summary>Blocks side by side: a row of divisions, and the head of a paper with its title left and its key fields right.</summary>
static class Columns
{
    const double Gap = 12;

    /// <summary>The hint wN: N twelfths of the width.</summary>
    public static int? Twelfths(XElement element)
    {
        foreach (var name in element.Classes())
        {
            if (
                name.Length is 2 or 3
                && name[0] == 'w'
                && int.TryParse(name.AsSpan(1), NumberStyles.None, CultureInfo.InvariantCulture, out var n)
            )
            {
                return n;
            }
        }
        return null;
    }

    public static void Row(BlockComposer composer, XElement element, Scope scope, Galley galley)
    {
        var columns = element.Elements().Where(e => !e.HasClass("only-screen")).ToList();
        if (columns.Count == 0)
        {
            return;
        }

        var available = scope.Width - Gap * (columns.Count - 1);
        var hints = columns.Select(Twelfths).ToList();
        var hinted = Math.Min(12, hints.Sum(hint => hint ?? 0)) / 12.0 * available;
        var free = hints.Count(hint => hint is null);
        double hintSum = Math.Max(12, hints.Sum(hint => hint ?? 0));

        var cells = new List<RowCell>();
        var x = scope.X;
        for (var i = 0; i < columns.Count; i++)
        {
            var width = hints[i] is { } twelfths ? twelfths / hintSum * available : (available - hinted) / free;
            cells.Add(Cell(composer, [columns[i]], scope with { X = x, Width = Math.Max(12, width) }));
            x += width + Gap;
        }
        // Divisions that begin with a heading get more space than others.
        if (galley.Count > 0 && columns.Any(c => c.Elements().FirstOrDefault() is { } first && first.Is("h2")))
        {
            galley.Space(Paragraphs.SpaceAbove(3));
        }

        galley.Add(new CellRow([.. cells]).ToSlice());
    }

    public static void Header(BlockComposer composer, XElement element, Scope scope, Galley galley)
    {
        const double SideShare = 0.42,
            SideShareBesideMark = 0.3,
            RuleSpace = 5;
        var side = element.Elements().Where(e => e.HasClass("side")).ToList();
        var mark = element.Elements().Where(e => e.Is("figure") && e.HasClass("mark")).Take(1).ToList();
        var main = element.Elements().Except([.. side, .. mark]).ToList();
        var markWidth = mark.Count == 0 ? 0 : MarkWidth(mark[0], scope.Width);
        var sideWidth = side.Count == 0 ? 0 : scope.Width * (markWidth > 0 ? SideShareBesideMark : SideShare);
        var mainLeft = scope.X + (markWidth == 0 ? 0 : markWidth + Gap);
        var mainWidth = scope.X + scope.Width - mainLeft - (side.Count == 0 ? 0 : sideWidth + Gap);
        var owner = new StructureElement("Div", scope.Parent);
        var cells = new List<RowCell>();
        if (markWidth > 0)
        {
            cells.Add(Cell(composer, mark, scope.Within(owner) with { Width = markWidth }));
        }

        cells.Add(Cell(composer, main, scope.Within(owner) with { X = mainLeft, Width = mainWidth }));
        if (side.Count > 0)
        {
            cells.Add(Cell(composer, side, scope.Within(owner) with { X = scope.X + scope.Width - sideWidth, Width = sideWidth }));
        }
        galley.Add(
            new CellRow([.. cells.Select(cell => cell with { PaddingBottom = RuleSpace })])
            {
                Decoration = height =>
                    [
                        composer.Inks.TitleRule is { } colour
                            ? new LineMark(scope.X, height, scope.X + scope.Width, height, 1.7, colour)
                            : new LineMark(scope.X, height, scope.X + scope.Width, height, 1.3, Colours.Ink),
                    ],
            }.ToSlice()
        );
        galley.Space(8);
    }

    /// <summary>
    /// A mark is about as high as a title with a line below it. On a pocket card, where the title needs the room, it is
    /// left out.
    /// </summary>
    static double MarkWidth(XElement mark, double available)
    {
        const double MarkHeight = 30,
            MostShare = 0.28,
            LeastAvailable = 360;
        if (available < LeastAvailable)
        {
            return 0;
        }

        var box = PictureSyntax.Numbers((string?)mark.Elements().First(e => e.Is("svg")).Attribute("viewBox") ?? "");
        return box is [_, _, > 0, > 0] b ? Math.Min(available * MostShare, MarkHeight * b[2] / b[3]) : 0;
    }

    static RowCell Cell(BlockComposer composer, IEnumerable<XElement> elements, Scope scope)
    {
        var content = new Galley(composer.Spacing);
        foreach (var element in elements)
        {
            composer.Block(element, scope, content);
        }

        return new RowCell(null, [.. content.Slices]);
    }
}
