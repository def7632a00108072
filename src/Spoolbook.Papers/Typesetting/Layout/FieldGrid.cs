using System.Globalization;
using System.Xml.Linq;
using Spoolbook.Papers.Pages;
using Spoolbook.Papers.Typesetting.Drawing;
using Spoolbook.Papers.Typesetting.Fonts;
using Spoolbook.Papers.Typesetting.Setting;
using Spoolbook.Pdf.Drawing;
using Spoolbook.Pdf.Structure;

namespace Spoolbook.Papers.Typesetting.Layout;

/// <summary>
/// Fields as on a printed form: a small label over its value, each in a hairline box. Screen readers get a list of
/// labels and values.
/// </summary>
static class FieldGrid
{
    const double Padding = 4;

    public static void Compose(BlockComposer composer, XElement element, Scope scope, Galley galley)
    {
        var columns = Number(element, "cols-") ?? 2;
        var list = new StructureElement("L", scope.Parent);
        var start = galley.Count;
        foreach (var row in Rows(element, columns))
        {
            var cells = new List<RowCell>();
            var edges = new List<double> { 0 };
            foreach (var (field, span) in row)
            {
                double left = edges[^1],
                    width = scope.Width * span / columns;
                var area = scope with { X = scope.X + left + Padding, Width = Math.Max(12, width - 2 * Padding) };
                cells.Add(Field(composer, field, area, list));
                edges.Add(left + width);
            }
            var tall = row.Any(entry => entry.Field.HasClass("tall"));
            galley.Add(
                new CellRow([.. cells])
                {
                    MinimumHeight = scope.Text.Size * (tall ? 3.3 : 2.6),
                    Decoration = height => Boxes(scope.X, edges, height),
                }.ToSlice()
            );
        }
        galley.KeepTogether(start);
    }

    /// <summary>Fields in rows of the grid; the last field of a row takes the rest of it.</summary>
    static IEnumerable<List<(XElement Field, int Span)>> Rows(XElement element, int columns)
    {
        var row = new List<(XElement Field, int Span)>();
        var used = 0;
        foreach (var field in element.Elements().Where(e => !e.HasClass("only-screen")))
        {
            var span = Math.Min(columns, Number(field, "span-") ?? 1);
            if (used + span > columns)
            {
                row[^1] = (row[^1].Field, row[^1].Span + columns - used);
                yield return row;
                row = [];
                used = 0;
            }
            row.Add((field, span));
            used += span;
        }
        if (row.Count == 0)
        {
            yield break;
        }

        row[^1] = (row[^1].Field, row[^1].Span + columns - used);
        yield return row;
    }

    static RowCell Field(BlockComposer composer, XElement field, Scope scope, StructureElement list)
    {
        var entry = new StructureElement("LI", list);
        var label = new TextStyle(Face.Medium, Math.Min(Styles.LabelSize, scope.Text.Size)) { Colour = Colours.Muted };
        var content = new Galley();
        foreach (var part in field.Elements())
        {
            var value = part.Is("dd");
            var style = value ? Styles.Common(part, Styles.Common(field, scope.Text)) : label;
            var owner = new StructureElement(value ? "LBody" : "Lbl", entry);
            composer.Content(
                part,
                scope.Within(owner) with
                {
                    Text = style,
                    Alignment =
                        part.HasClass("right") ? Alignment.Right
                        : part.HasClass("center") ? Alignment.Center
                        : Alignment.Left,
                },
                content
            );
        }
        return new RowCell(entry, [.. content.Slices]) { PaddingTop = 2.2, PaddingBottom = 2.6 };
    }

    static IEnumerable<PageMark> Boxes(double x, List<double> edges, double height)
    {
        var paint = new Paint(null, Colours.Rule, 0.5);
        for (var i = 1; i < edges.Count; i++)
        {
            yield return new BoxMark(x + edges[i - 1], 0, edges[i] - edges[i - 1], height, paint);
        }
    }

    static int? Number(XElement element, string prefix)
    {
        var name = element.Classes().FirstOrDefault(c => c.StartsWith(prefix, StringComparison.Ordinal));
        return name is null ? null : int.Parse(name.AsSpan(prefix.Length), CultureInfo.InvariantCulture);
    }
}
