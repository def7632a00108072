using System.Collections.Immutable;
using Spoolbook.Entry.Tables;
using Spoolbook.Reading.Editing;
using Spoolbook.Shoot.Texts;

namespace Spoolbook.Entry.Takes;

/// <summary>The rows under the heads of a table.</summary>
sealed class TakeTable
{
    // The workbook has three lines above its heads; the user may add more.
    const int MostAbove = 50;

    readonly Table _table;
    readonly ImmutableDictionary<TakeColumn, int> _columns;

    TakeTable(Table table, ImmutableDictionary<TakeColumn, int> columns)
    {
        _table = table;
        _columns = columns;
    }

    public string Name => _table.Name;

    public bool IsText => _table.IsText;

    public ImmutableArray<TakeRow> Rows { get; private set; } = [];

    /// <summary>Heads that nothing reads, with their addresses.</summary>
    public ImmutableArray<Cell> Unread { get; private set; } = [];

    public int Hidden { get; private set; }

    public bool Has(TakeColumn column) => _columns.ContainsKey(column);

    public string? Where(int row, TakeColumn column) => _columns.TryGetValue(column, out var at) ? _table.Address(row, at) : null;

    /// <summary>Whether some row of a table has all the needed heads.</summary>
    public static bool HasHeads(Table table, TakeHeads heads) =>
        HeadRow(table, heads) is { } head && TakeHeads.Needed.All(n => head.Cells.Any(c => heads.Column(c.Text) == n));

    /// <exception cref="TableFault">No heads, a needed head missing, a head twice, or merged cells.</exception>
    public static TakeTable Read(Table table, TakeHeads heads, Objections objections)
    {
        var head = HeadRow(table, heads) ?? throw NoHeads(table, heads);
        var columns = Columns(head, heads);
        var missing = TakeHeads.Needed.Where(c => !columns.ContainsKey(c)).ToList();
        if (missing.Count > 0)
        {
            throw new TableFault(
                head.Address,
                $"The heads have no column {string.Join(" and no column ", missing.Select(c => $"'{heads.Name(c)}'"))}.",
                $"Write {string.Join(", ", TakeHeads.Needed.Select(heads.Name))} over the columns that say which take of which roll "
                    + $"a row is."
            );
        }

        foreach (var merged in table.Merged.Where(m => m.LastRow >= head.Number))
        {
            objections.Add(
                $"{table.Name}!{merged.Range}",
                "Cells are merged here, and only the first of them holds anything.",
                "Split them, and write each row's own value into it."
            );
        }

        var read = new TakeTable(table, columns);
        var byColumn = columns.ToDictionary(c => c.Value, c => c.Key);
        var keys = head
            .Cells.Where(c => !byColumn.ContainsKey(c.Column) && TakeKeyNames.WithoutColumn.Contains(c.Text.Trim()))
            .DistinctBy(c => c.Text.Trim(), StringComparer.Ordinal)
            .ToDictionary(c => c.Column, c => c.Text.Trim());
        read.Unread = [.. head.Cells.Where(c => !byColumn.ContainsKey(c.Column) && !keys.ContainsKey(c.Column))];
        foreach (var cell in read.Unread)
        {
            if (heads.Nearest(cell.Text) is { } near && !columns.ContainsKey(near))
            {
                objections.Add(
                    cell.Address,
                    $"'{cell.Text}' is no head of the Takes sheet.",
                    $"Write '{heads.Name(near)}' if that is meant, or give the column a head of another kind: then it is not read."
                );
            }
        }

        var rows =
            from row in table.Rows
            where row.Number > head.Number
            let cells = row.Cells.Where(c => byColumn.ContainsKey(c.Column)).ToImmutableDictionary(c => byColumn[c.Column])
            where cells.Values.Any(c => !c.IsFormula)
            let own = row.Cells.Where(c => keys.ContainsKey(c.Column)).ToImmutableDictionary(c => keys[c.Column])
            select (Row: row, Take: new TakeRow(row.Number, row.Address, cells, read) { Keys = own });
        var all = rows.ToList();
        foreach (
            var cell in all.SelectMany(r => r.Take.Cells.Values.Concat(r.Take.Keys.Values)).Where(c => !TextCharacters.AreAllowed(c.Text))
        )
        {
            var code = TextCharacters.FirstRefused(cell.Text)!.Value;
            objections.Add(
                cell.Address,
                $"'{TextCharacters.Without(cell.Text)}' holds {TextCharacters.Number(code)}, {TextCharacters.Name(code)}, which no text "
                    + "may hold.",
                "Empty the cell and type it anew."
            );
        }

        read.Rows = [.. all.Select(r => r.Take)];
        read.Hidden = all.Count(r => r.Row.IsHidden);
        return read;
    }

    static Row? HeadRow(Table table, TakeHeads heads)
    {
        var best =
            from row in table.Rows.Take(MostAbove)
            let known = row.Cells.Select(c => heads.Column(c.Text)).OfType<TakeColumn>().Distinct().ToList()
            let needed = TakeHeads.Needed.Count(known.Contains)
            where needed >= 2
            orderby needed descending, known.Count descending
            select row;
        return best.FirstOrDefault();
    }

    static ImmutableDictionary<TakeColumn, int> Columns(Row head, TakeHeads heads)
    {
        var found = new Dictionary<TakeColumn, Cell>();
        foreach (var cell in head.Cells)
        {
            if (heads.Column(cell.Text) is { } column && !found.TryAdd(column, cell))
            {
                throw new TableFault(
                    cell.Address,
                    $"'{cell.Text}' is the head of another column too, {found[column].Address}.",
                    "Keep one of the two, or give the other a head of its own."
                );
            }
        }

        return found.ToImmutableDictionary(f => f.Key, f => f.Value.Column);
    }

    static TableFault NoHeads(Table table, TakeHeads heads) =>
        new(
            table.Name,
            "No row here has the heads of the Takes sheet.",
            $"Write them over the columns, at least {string.Join(", ", TakeHeads.Needed.Select(heads.Name))}; "
                + $"{heads.Name(TakeColumn.ToFrame)} and {heads.Name(TakeColumn.Mark)} for new takes."
        );
}
