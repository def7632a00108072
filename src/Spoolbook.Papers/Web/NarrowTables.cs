using System.Collections.Immutable;
using System.Xml.Linq;
using Spoolbook.Papers.Pages;
using Spoolbook.Papers.Typesetting.Layout;

namespace Spoolbook.Papers.Web;

/// <summary>
/// Prepares a page's tables for a screen that is too narrow: there the style sheet stacks each row as a block, with its
/// head on top and the column's head over every value. Adds what the style sheet needs for that, for every template alike.
/// Browsers still tell a screen reader of a table that is stacked, and its roles written out would not be valid HTML.
/// </summary>
internal static class NarrowTables
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

    public static void Prepare(XElement article)
    {
        foreach (var table in article.Descendants().Where(e => e.Is("table")).ToList())
        {
            var grid = new TableGrid(table, Medium.Screen);
            foreach (var cell in grid.Rows.SelectMany(r => r.Cells).Where(c => Longest(LinesOf(c.Element).SelectMany(Words)) > LongWord))
            {
                cell.Element.AddClass("breaks");
            }

            if (Width(grid) <= Line)
            {
                continue;
            }

            // A cell that spans rows belongs to several blocks, and values without heads would mean nothing.
            var stacks =
                grid.Rows.Any(r => r.Kind == RowKind.Head)
                && !grid.Rows.Any(r => r.Kind == RowKind.Body && r.Cells.Any(c => c.RowSpan > 1));
            table.AddClass(stacks ? "stacks" : "slides");
            if (stacks)
            {
                Stack(table, grid);
            }
        }
    }

    static int Width(TableGrid grid) => Enumerable.Range(0, grid.Width).Sum(column => Needed(grid, column) + Beside);

    static int Needed(TableGrid grid, int column) =>
        grid.Rows.SelectMany(r => r.Cells).Where(c => c.Column == column && c.ColumnSpan == 1).Select(Needed).DefaultIfEmpty().Max();

    static int Needed(GridCell cell)
    {
        var whole = (cell.Element.HasClass("num") || cell.Element.HasClass("nowrap")) && !cell.Element.Parent!.Parent!.Is("thead");
        var lines = LinesOf(cell.Element).ToList();
        return whole ? Longest(lines) : Math.Max(Longest(lines.SelectMany(Words)), Math.Min(Longest(lines), Legible));
    }

    static void Stack(XElement table, TableGrid grid)
    {
        var heads = Enumerable.Range(0, grid.Width).Select(column => HeadOf(grid, column)).ToImmutableArray();
        var rooms = RoomsOf(grid, heads);
        var ruled = false;
        foreach (var row in grid.Rows)
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

    static string HeadOf(TableGrid grid, int column) =>
        string.Join(
            ' ',
            grid.Rows.Where(r => r.Kind == RowKind.Head)
                .SelectMany(r => r.Cells)
                .Where(c => c.Column <= column && column < c.Column + c.ColumnSpan)
                .SelectMany(c => LinesOf(c.Element))
                .Where(line => line.Length > 0)
        );

    static string[] RoomsOf(TableGrid grid, ImmutableArray<string> heads)
    {
        string[] rooms = [.. Enumerable.Range(0, grid.Width).Select(column => RoomOf(grid, column, heads[column]))];
        for (var column = 0; column < grid.Width; column++)
        {
            // A row's short head shares its line with the text that follows it.
            var shares =
                TitlesRows(grid, column)
                && rooms[column] == "quarter"
                && column + 1 < grid.Width
                && rooms[column + 1] is "whole" or "half"
                && !TitlesRows(grid, column + 1);
            if (shares)
            {
                rooms[column + 1] = "most";
            }
            else if (TitlesRows(grid, column))
            {
                rooms[column] = "whole";
            }
        }

        return rooms;
    }

    static string RoomOf(TableGrid grid, int column, string head)
    {
        var longest = Longest(BodyOf(grid, column).SelectMany(c => LinesOf(c.Element)));
        return grid.Hint(column) is { } hint && hint.HasClass("rest") ? "whole"
            : longest <= Quarter && Longest(Words(head)) <= QuarterHead ? "quarter"
            : longest <= Half ? "half"
            : "whole";
    }

    static bool TitlesRows(TableGrid grid, int column) => BodyOf(grid, column).Any(c => c.Element.Is("th"));

    static IEnumerable<GridCell> BodyOf(TableGrid grid, int column) =>
        grid.Rows.Where(r => r.Kind == RowKind.Body).SelectMany(r => r.Cells).Where(c => c.Column == column && c.ColumnSpan == 1);

    /// <summary>A cell's text line by line, as breaks and blocks divide it.</summary>
    static IEnumerable<string> LinesOf(XElement cell)
    {
        var text = string.Concat(
            cell.DescendantNodes()
                .Select(node =>
                    node switch
                    {
                        XText said => said.Value,
                        XElement element when element.Is("br") || element.Is("li") || element.Is("p") => Escaping.LineBreak.ToString(),
                        _ => "",
                    }
                )
        );
        return text.Split(Escaping.LineBreak).Select(line => string.Join(' ', Words(line)));
    }

    static string[] Words(string line) => line.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);

    static int Longest(IEnumerable<string> texts) => texts.Select(t => t.Length).DefaultIfEmpty().Max();
}
