using System.Xml.Linq;
using Spoolbook.Papers.Pages;
using Spoolbook.Papers.Typesetting.Drawing;
using Spoolbook.Papers.Typesetting.Fonts;
using Spoolbook.Papers.Typesetting.Setting;
using Spoolbook.Pdf.Drawing;
using Spoolbook.Pdf.Structure;

namespace Spoolbook.Papers.Typesetting.Layout;

/// <summary>
/// Sets a table: its head on every page that it reaches, its rows whole. The rows are direct children of the table in
/// the structure, because PDF 1.4, the base of PDF/A-1, has no table head and body.
/// </summary>
sealed class TableComposer
{
    readonly BlockComposer _composer;
    readonly XElement _table;
    readonly Scope _scope;
    readonly TableGrid _grid;
    readonly TableLook _look;
    readonly StructureElement _owner;
    readonly double[] _widths;
    readonly double[] _lefts;

    public TableComposer(BlockComposer composer, XElement table, Scope scope)
    {
        _composer = composer;
        _table = table;
        _scope = scope;
        _grid = new TableGrid(table);
        _look = new TableLook(table, scope.Text, _grid, composer.Spacing / composer.Setup.Scale, composer.Fitted);
        _owner = new StructureElement("Table", scope.Parent);
        var measure = new TableMeasure(_grid, _look, composer.Warnings);
        _widths = measure.Widths(scope.Width);
        composer.IsCrowded |= measure.IsCrowded && table.HasClass("fitted");
        _lefts = new double[_widths.Length];
        for (var i = 1; i < _lefts.Length; i++)
        {
            _lefts[i] = _lefts[i - 1] + _widths[i - 1];
        }
    }

    public void Compose(Galley galley)
    {
        Caption(galley);
        var slices = Slices();
        var head = slices.Where((_, i) => _grid.Rows[i].Kind == RowKind.Head).ToList();
        var repeated =
            head.Count == 0
                ? null
                : new RepeatedHead(Galley.Height(head), [.. Galley.Pack([.. head]).Select(piece => piece.AsFurniture())]);
        for (var i = 0; i < slices.Count; i++)
        {
            var isHead = _grid.Rows[i].Kind == RowKind.Head;
            galley.Add(slices[i] with { Head = isHead ? null : repeated, KeepWithNext = KeepOf(i) });
        }
    }

    void Caption(Galley galley)
    {
        if (_table.Elements().FirstOrDefault(e => e.Is("caption")) is not { } caption)
        {
            return;
        }

        var style = Styles.Common(caption, _scope.Text with { Face = Face.SemiBold });
        Paragraphs.Lines(
            _composer,
            caption.Nodes(),
            _scope.Within(new StructureElement("Caption", _owner)) with
            {
                Text = style,
                Alignment = Alignment.Left,
            },
            galley
        );
        galley.KeepLastWithNext();
        galley.Space(2.5);
    }

    Keep KeepOf(int row)
    {
        if (row == _grid.Rows.Count - 1)
        {
            return Keep.Free;
        }

        var crossed = Enumerable.Range(0, _grid.Width).Any(column => _grid.IsCrossed(row, column));
        var belongs = _grid.Rows[row + 1].Element.HasClass("total") || GoesOn(row);
        return crossed || belongs || _grid.Rows[row].Kind == RowKind.Head || _grid.Rows[row].Element.HasClass("group") ? Keep.Always
            : IsLonely(row) ? Keep.Together
            : Keep.Free;
    }

    // A single row of a longer table is lost at the foot of a page, and so is the last one on the next.
    bool IsLonely(int row)
    {
        var first = _grid.Rows.TakeWhile(r => r.Kind == RowKind.Head).Count();
        return _grid.Rows.Count - first > 2 && (row == first || row == _grid.Rows.Count - 2);
    }

    // Whether the next row says more of the same thing.
    bool GoesOn(int row) => row < _grid.Rows.Count - 1 && _grid.Rows[row + 1].Element.HasClass("more");

    List<Slice> Slices()
    {
        var cells = _grid
            .Rows.Select(row =>
            {
                var owner = new StructureElement("TR", _owner);
                return row.Cells.Select(cell => Cell(cell, owner)).ToList();
            })
            .ToList();
        var heights = Heights(cells);
        return
        [
            .. _grid.Rows.Select(
                (row, i) =>
                    new CellRow([.. cells[i]])
                    {
                        MinimumHeight = heights[i],
                        Decoration = height => Decoration(i, height, heights),
                    }.ToSlice() with
                    {
                        Names = (string?)row.Element.Attribute("id") is { } name ? [name] : [],
                    }
            ),
        ];
    }

    RowCell Cell(GridCell cell, StructureElement row)
    {
        var heads = cell.Element.Is("th");
        var ofRow =
            (string?)cell.Element.Attribute("scope") == "row"
            || cell.Element.Attribute("scope") is null && !cell.Element.Parent!.Parent!.Is("thead");
        var owner = new StructureElement(heads ? "TH" : "TD", row)
        {
            Scope =
                !heads ? null
                : ofRow ? HeadScope.Row
                : HeadScope.Column,
            ColumnSpan = cell.ColumnSpan,
            RowSpan = cell.RowSpan,
        };
        var width = Span(cell) - _look.PaddingAcross(cell);
        var scope = new Scope(
            _scope.X + _lefts[cell.Column] + _look.PaddingLeft(cell),
            Math.Max(6, width),
            _scope.MaximumHeight,
            _look.Text(cell),
            owner
        )
        {
            Alignment = _look.Align(cell),
        };
        var content = new Galley();
        var empty = string.IsNullOrWhiteSpace(cell.Element.Value) && !cell.Element.Descendants().Any(e => e.Is("svg"));
        if (!empty)
        {
            _composer.Content(cell.Element, scope, content);
        }

        return new RowCell(owner, [.. content.Slices])
        {
            PaddingTop = _look.PaddingY,
            PaddingBottom = _look.PaddingY,
            Reaches = cell.RowSpan > 1,
        };
    }

    double Span(GridCell cell) => _widths.Skip(cell.Column).Take(cell.ColumnSpan).Sum();

    /// <summary>Each row as tall as its cells; the last row of a cell that spans several takes the difference.</summary>
    double[] Heights(List<List<RowCell>> cells)
    {
        var heights = new double[cells.Count];
        for (var i = 0; i < cells.Count; i++)
        {
            heights[i] = Math.Max(
                _grid.Rows[i].Element.HasClass("blank")
                    ? TableLook.BlankHeight(_composer.Setup.Paper)
                    : _look.PaddingY * 2 + _scope.Text.Size,
                cells[i].Where(cell => !cell.Reaches).Select(cell => cell.Height).DefaultIfEmpty(0).Max()
            );
        }
        foreach (var cell in _grid.Rows.SelectMany(row => row.Cells).Where(cell => cell.RowSpan > 1))
        {
            var height = cells[cell.Row][_grid.Rows[cell.Row].Cells.ToList().IndexOf(cell)].Height;
            var missing = height - heights.Skip(cell.Row).Take(cell.RowSpan).Sum();
            if (missing > 0)
            {
                heights[cell.Row + cell.RowSpan - 1] += missing;
            }
        }
        return heights;
    }

    IEnumerable<PageMark> Decoration(int row, double height, double[] heights)
    {
        var element = _grid.Rows[row].Element;
        var head = _grid.Rows[row].Kind == RowKind.Head;
        double left = _scope.X,
            right = _scope.X + _widths.Sum();
        if (element.HasClass("group"))
        {
            yield return new BoxMark(left, 0, right - left, height, new Paint(Colours.Band, null));
        }

        if (_look.Boxed)
        {
            foreach (var cell in _grid.Rows[row].Cells)
            {
                var tall = cell.RowSpan == 1 ? height : heights.Skip(row).Take(cell.RowSpan).Sum();
                yield return new BoxMark(
                    left + _lefts[cell.Column],
                    0,
                    Span(cell),
                    tall,
                    new Paint(head ? Colours.Band : null, Colours.Rule, 0.5)
                );
            }
        }
        else
        {
            foreach (var rule in Rules(row, height, head))
            {
                yield return rule;
            }
        }
        // A bar inside the head's own padding, so that a colour moves nothing.
        if (head && row == 0 && _composer.Inks.TableHead is { } bar)
        {
            yield return new LineMark(left, 0.2, right, 0.2, 1.8, bar);
        }

        var firstTotal = element.HasClass("total") && row > 0 && !_grid.Rows[row - 1].Element.HasClass("total");
        if (firstTotal)
        {
            yield return new LineMark(left, 0, right, 0, 0.9, Colours.Ink);
        }

        if (element.HasClass("flag"))
        {
            yield return new BoxMark(left - 3.6, 0.4, 2.2, height - 0.8, new Paint(Colours.Ink, null));
        }
    }

    IEnumerable<PageMark> Rules(int row, double height, bool head)
    {
        double left = _scope.X,
            right = _scope.X + _widths.Sum();
        var lastHead = head && (row == _grid.Rows.Count - 1 || _grid.Rows[row + 1].Kind != RowKind.Head);
        if (head && row == 0 && _composer.Inks.TableHead is null)
        {
            yield return new LineMark(left, 0, right, 0, 0.9, Colours.Ink);
        }

        for (var column = 0; column < _grid.Width; column++)
        {
            if (_grid.IsCrossed(row, column) || GoesOn(row))
            {
                continue;
            }

            var x = left + _lefts[column];
            var line = lastHead ? 0.6 : 0.35;
            yield return new LineMark(x, height, x + _widths[column], height, line, lastHead ? Colours.Ink : Colours.Hairline);
        }
    }
}
