using System.Collections.Immutable;
using System.Xml.Linq;
using Spoolbook.Papers.Pages;
using Spoolbook.Papers.Typesetting.Layout;

namespace Spoolbook.Papers.Web;

/// <summary>A table, measured once, that a narrow screen shows row by row as blocks, or lets slide.</summary>
internal sealed class NarrowTable
{
    // A phone's line at the size of tables, in letters, and what a cell needs beside its text.
    const int Line = 45;
    const int Beside = 2;

    // A text of several words is never broken narrower than this.
    const int Legible = 16;

    // A longer word than any language's usual ones may be broken anywhere, or it pushes its table off every page.
    const int LongWord = 24;

    // The letters that fit in one and in two of a block's four columns; and a word in a column's head, which is set smaller.
    const int Quarter = 9;
    const int Half = 24;
    const int QuarterHead = 13;

    readonly XElement _table;
    readonly TableGrid _grid;
    readonly Dictionary<GridCell, CellText> _texts = new(ReferenceEqualityComparer.Instance);

    // The cells of one column alone, and which of them are of the body.
    readonly List<GridCell>[] _columns;
    readonly List<GridCell>[] _bodies;

    NarrowTable(XElement table)
    {
        _table = table;
        _grid = new TableGrid(table, Medium.Screen);
        _columns = [.. Enumerable.Range(0, _grid.Width).Select(_ => new List<GridCell>())];
        _bodies = [.. Enumerable.Range(0, _grid.Width).Select(_ => new List<GridCell>())];
        foreach (var row in _grid.Rows)
        {
            foreach (var cell in row.Cells)
            {
                _texts[cell] = CellText.Of(cell.Element);
                if (cell.ColumnSpan == 1)
                {
                    _columns[cell.Column].Add(cell);
                    if (row.Kind == RowKind.Body)
                    {
                        _bodies[cell.Column].Add(cell);
                    }
                }
            }
        }
    }

    /// <summary>Gives a table and its cells the classes that the style sheet needs.</summary>
    public static void Prepare(XElement table) => new NarrowTable(table).Prepare();

    void Prepare()
    {
        foreach (var (cell, _) in _texts.Where(c => c.Value.LongestWord > LongWord))
        {
            cell.Element.AddClass("breaks");
        }

        if (_columns.Sum(column => column.Select(Needed).DefaultIfEmpty().Max() + Beside) <= Line)
        {
            return;
        }

        // A cell that spans rows belongs to several blocks, and values without heads would mean nothing.
        var stacks =
            _grid.Rows.Any(r => r.Kind == RowKind.Head) && !_grid.Rows.Any(r => r.Kind == RowKind.Body && r.Cells.Any(c => c.RowSpan > 1));
        _table.AddClass(stacks ? "stacks" : "slides");
        if (stacks)
        {
            Stack();
        }
    }

    int Needed(GridCell cell)
    {
        var text = _texts[cell];
        var whole = (cell.Element.HasClass("num") || cell.Element.HasClass("nowrap")) && !cell.Element.Parent!.Parent!.Is("thead");
        return whole ? text.LongestLine : Math.Max(text.LongestWord, Math.Min(text.LongestLine, Legible));
    }

    void Stack()
    {
        var heads = Enumerable.Range(0, _grid.Width).Select(HeadOf).ToImmutableArray();
        var rooms = RoomsOf(heads);
        var ruled = false;
        foreach (var row in _grid.Rows)
        {
            foreach (var cell in row.Cells)
            {
                if (row.Kind == RowKind.Body && cell.ColumnSpan == 1)
                {
                    cell.Element.SetAttributeValue(
                        "data-head",
                        cell.Element.Is("td") && heads[cell.Column].Length > 0 ? heads[cell.Column] : null
                    );
                    cell.Element.AddClass(rooms[cell.Column]);
                }
            }

            // Writing lines keep their empty cells. Numbered ones are all ruled alike, so only the first shows its heads.
            var form =
                row.Element.HasClass("blank")
                && row.Cells.Where(c => c.Column > 0 && c.Element.Is("td")).All(c => c.Element.Value.Length == 0);
            var numbered = form && row.Cells[0].Element.Is("td");
            if (form)
            {
                row.Element.AddClass(numbered && ruled ? "again" : "form");
            }

            ruled = numbered;
        }
    }

    string HeadOf(int column) =>
        string.Join(
            ' ',
            _grid
                .Rows.Where(r => r.Kind == RowKind.Head)
                .SelectMany(r => r.Cells)
                .Where(c => c.Column <= column && column < c.Column + c.ColumnSpan)
                .SelectMany(c => _texts[c].Lines)
                .Where(line => line.Length > 0)
        );

    string[] RoomsOf(ImmutableArray<string> heads)
    {
        string[] rooms = [.. Enumerable.Range(0, _grid.Width).Select(column => RoomOf(column, heads[column]))];
        bool[] titles = [.. _bodies.Select(cells => cells.Any(c => c.Element.Is("th")))];
        for (var column = 0; column < _grid.Width; column++)
        {
            // A row's short head shares its line with the text that follows it.
            var shares =
                titles[column]
                && rooms[column] == "quarter"
                && column + 1 < _grid.Width
                && rooms[column + 1] is "whole" or "half"
                && !titles[column + 1];
            if (shares)
            {
                rooms[column + 1] = "most";
            }
            else if (titles[column])
            {
                rooms[column] = "whole";
            }
        }

        return rooms;
    }

    string RoomOf(int column, string head)
    {
        var longest = _bodies[column].Select(c => _texts[c].LongestLine).DefaultIfEmpty().Max();
        return _grid.Hint(column) is { } hint && hint.HasClass("rest") ? "whole"
            : longest <= Quarter && CellText.LongestWordOf(head) <= QuarterHead ? "quarter"
            : longest <= Half ? "half"
            : "whole";
    }
}
