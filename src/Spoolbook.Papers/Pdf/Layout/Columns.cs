using System.Globalization;
using System.Xml.Linq;
using Spoolbook.Papers.Pages;
using Spoolbook.Papers.Pdf.Drawing;
using Spoolbook.Press.Structure;

namespace Spoolbook.Papers.Pdf.Layout;

/// <summary>Blocks side by side: a row of divisions, and the head of a paper with its title left and its key fields right.</summary>
static class Columns
{
    const double Gap = 12;

    /// <summary>The hint wN: N twelfths of the width.</summary>
    public static int? Twelfths(XElement element)
    {
        foreach (string name in element.Classes())
        {
            if (name.Length is 2 or 3 && name[0] == 'w' && int.TryParse(name.AsSpan(1), NumberStyles.None, CultureInfo.InvariantCulture, out int n)) return n;
        }
        return null;
    }

    public static void Row(BlockComposer composer, XElement element, Scope scope, Galley galley)
    {
        var columns = element.Elements().Where(e => !e.HasClass("only-screen")).ToList();
        if (columns.Count == 0) return;
        double available = scope.Width - Gap * (columns.Count - 1);
        var hints = columns.Select(Twelfths).ToList();
        double hinted = Math.Min(12, hints.Sum(hint => hint ?? 0)) / 12.0 * available;
        int free = hints.Count(hint => hint is null);
        double hintSum = Math.Max(12, hints.Sum(hint => hint ?? 0));

        var cells = new List<RowCell>();
        double x = scope.X;
        for (int i = 0; i < columns.Count; i++)
        {
            double width = hints[i] is { } twelfths ? twelfths / hintSum * available : (available - hinted) / free;
            cells.Add(Cell(composer, [columns[i]], scope with { X = x, Width = Math.Max(12, width) }));
            x += width + Gap;
        }
        galley.Add(new CellRow([.. cells]).ToSlice());
    }

    public static void Header(BlockComposer composer, XElement element, Scope scope, Galley galley)
    {
        const double SideShare = 0.42, RuleSpace = 5;
        var side = element.Elements().Where(e => e.HasClass("side")).ToList();
        var main = element.Elements().Where(e => !e.HasClass("side")).ToList();
        double sideWidth = side.Count == 0 ? 0 : scope.Width * SideShare;
        double mainWidth = side.Count == 0 ? scope.Width : scope.Width - sideWidth - Gap;
        var owner = new StructureElement("Div", scope.Parent);
        var cells = new List<RowCell> { Cell(composer, main, scope.Within(owner) with { Width = mainWidth }) };
        if (side.Count > 0)
        {
            cells.Add(Cell(composer, side, scope.Within(owner) with { X = scope.X + scope.Width - sideWidth, Width = sideWidth }));
        }
        galley.Add(new CellRow([.. cells.Select(cell => cell with { PaddingBottom = RuleSpace })])
        {
            Decoration = height => [new LineMark(scope.X, height, scope.X + scope.Width, height, 1.3, Colours.Ink)],
        }.ToSlice());
        galley.Space(8);
    }

    static RowCell Cell(BlockComposer composer, IEnumerable<XElement> elements, Scope scope)
    {
        var content = new Galley(composer.Spacing);
        foreach (var element in elements) composer.Block(element, scope, content);
        return new RowCell(null, [.. content.Slices]);
    }
}
