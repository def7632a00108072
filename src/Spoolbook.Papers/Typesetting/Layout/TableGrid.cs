using System.Globalization;
using System.Xml.Linq;
using Spoolbook.Papers.Pages;

namespace Spoolbook.Papers.Typesetting.Layout;

/// <summary>The rows of a table with every cell in its column, including cells that span others.</summary>
sealed class TableGrid
{
    static readonly string[] Parts = ["thead", "tbody", "tfoot"];

    // Few tables have any, and every rule of every row looks them up.
    readonly List<GridCell> _reaching;

    public TableGrid(XElement table, Medium medium = Medium.Paper)
    {
        var other = medium == Medium.Paper ? "only-screen" : "only-paper";
        Columns = [.. table.Elements().Where(e => e.Is("colgroup")).SelectMany(group => group.Elements())];
        var elements = Parts
            .SelectMany(part => table.Elements().Where(e => e.Is(part)))
            .SelectMany(part => part.Elements())
            .Where(row => !row.HasClass(other))
            .ToList();
        var reach = new List<int>();
        var rows = new List<GridRow>();
        for (var row = 0; row < elements.Count; row++)
        {
            var kind = elements[row].Parent!.Is("thead") ? RowKind.Head : RowKind.Body;
            var left = RowsLeft(elements, row);
            rows.Add(new GridRow(elements[row], kind, Place(elements[row], row, left, reach)));
        }
        Rows = rows;
        _reaching = [.. rows.SelectMany(row => row.Cells).Where(cell => cell.RowSpan > 1)];
        Width = Math.Max(Columns.Count, reach.Count);
    }

    public IReadOnlyList<XElement> Columns { get; }

    public IReadOnlyList<GridRow> Rows { get; }

    /// <summary>The number of columns.</summary>
    public int Width { get; }

    public XElement? Hint(int column) => column < Columns.Count ? Columns[column] : null;

    /// <summary>Whether a cell from above crosses the grid line below this row, at this column.</summary>
    public bool IsCrossed(int row, int column) =>
        _reaching.Any(c => c.Row <= row && c.Row + c.RowSpan - 1 > row && c.Column <= column && column < c.Column + c.ColumnSpan);

    /// <summary>A cell never spans beyond the part of the table that it is in.</summary>
    static int RowsLeft(List<XElement> rows, int row)
    {
        var end = row;
        while (end < rows.Count && rows[end].Parent == rows[row].Parent)
        {
            end++;
        }

        return end - row;
    }

    /// <summary><paramref name="reach"/> has, for each column, how many rows a cell from above still takes.</summary>
    static List<GridCell> Place(XElement row, int number, int rowsLeft, List<int> reach)
    {
        var cells = new List<GridCell>();
        var column = 0;
        foreach (var element in row.Elements())
        {
            while (column < reach.Count && reach[column] > 0)
            {
                column++;
            }

            int columnSpan = Span(element, "colspan"),
                rowSpan = Math.Min(Span(element, "rowspan"), rowsLeft);
            cells.Add(new GridCell(element, number, column, columnSpan, rowSpan));
            while (reach.Count < column + columnSpan)
            {
                reach.Add(0);
            }

            for (var i = column; i < column + columnSpan; i++)
            {
                reach[i] = rowSpan;
            }

            column += columnSpan;
        }
        for (var i = 0; i < reach.Count; i++)
        {
            reach[i] = Math.Max(0, reach[i] - 1);
        }

        return cells;
    }

    static int Span(XElement cell, string name) => int.Parse((string?)cell.Attribute(name) ?? "1", CultureInfo.InvariantCulture);
}
