using System.Xml.Linq;
using Spoolbook.Papers.Pages;
using Spoolbook.Papers.Typesetting.Setting;
using Spoolbook.Pdf.Structure;

namespace Spoolbook.Papers.Typesetting.Layout;

/// <summary>Measures what the cells of a table need, and divides its width.</summary>
sealed class TableMeasure(TableGrid grid, TableLook look, WarningBook warnings)
{
    // A word wider than this share of the table is broken rather than push the other columns away.
    const double WidestWord = 0.3;

    // Words in a narrower column than this share of the table come one or two to a line.
    const double NarrowestRest = 0.15;

    /// <summary>Whether the columns that were measured last have no room: words are broken, or the rest is a thin strip.</summary>
    public bool IsCrowded { get; private set; }

    static readonly StructureElement Nobody = new("P", null);

    public double[] Widths(double width)
    {
        var words = new double[grid.Width];
        var lines = new double[grid.Width];
        var cells = grid.Rows.SelectMany(row => row.Cells).OrderBy(cell => cell.ColumnSpan).ToList();
        foreach (var cell in cells)
        {
            var (word, line) = Extent(cell);
            Widen(words, cell, Math.Min(word, width * WidestWord));
            Widen(lines, cell, line);
        }
        var needs = new List<ColumnNeed>();
        for (var i = 0; i < grid.Width; i++)
        {
            var hint = grid.Hint(i);
            var narrow = hint is not null && (hint.HasClass("num") || hint.HasClass("nowrap") || hint.HasClass("center"));
            needs.Add(new ColumnNeed(words[i], Math.Max(words[i], lines[i]), Given(hint, width), narrow, hint?.HasClass("rest") == true));
        }
        var widths = ColumnWidths.Share(needs, width);
        IsCrowded = needs
            .Zip(widths, (need, given) => given < (need.Narrow ? need.Line : need.Word) - 0.01 || IsThin(need, given, width))
            .Any(crowded => crowded);
        return widths;
    }

    static bool IsThin(ColumnNeed need, double given, double width) =>
        need.Rest && given < need.Line - 0.01 && given < width * NarrowestRest;

    static double? Given(XElement? hint, double width) =>
        hint is null ? null
        : (string?)hint.Attribute("data-width") is { } own ? TemplateLength.Points(own, 0)
        : Columns.Twelfths(hint) is { } twelfths ? twelfths * width / 12
        : null;

    /// <summary>Spreads what a cell needs beyond its columns evenly over them.</summary>
    static void Widen(double[] columns, GridCell cell, double needed)
    {
        var missing = needed;
        for (var i = 0; i < cell.ColumnSpan; i++)
        {
            missing -= columns[cell.Column + i];
        }

        if (missing <= 0)
        {
            return;
        }

        for (var i = 0; i < cell.ColumnSpan; i++)
        {
            columns[cell.Column + i] += missing / cell.ColumnSpan;
        }
    }

    (double Word, double Line) Extent(GridCell cell)
    {
        var (word, line) = Extent(cell.Element, look.Text(cell));
        if (look.IsOneLine(cell))
        {
            word = line;
        }

        var padding = look.PaddingAcross(cell) + 0.5;
        return (word + padding, line + padding);
    }

    (double Word, double Line) Extent(XElement element, TextStyle style)
    {
        var blocks = element.Elements().Where(e => Vocabulary.Blocks.Contains(e.Name.LocalName) || e.Is("li")).ToList();
        if (blocks.Count > 0)
        {
            var extents = blocks.Select(block => Extent(block, Styles.Common(block, style))).ToList();
            var indent = element.Is("ul") || element.Is("ol") ? Lists.Indent(element, style.Size) : 0;
            return (indent + extents.Max(e => e.Word), indent + extents.Max(e => e.Line));
        }
        // A picture fits any width; this is enough to see it.
        const double Picture = 40;
        if (element.Is("figure"))
        {
            return (Picture, Picture);
        }

        return LineBreaker.Extent(InlineReader.Read(element.Nodes(), style, Nobody, warnings));
    }
}
