namespace Spoolbook.Papers.Workbook;

/// <summary>
/// The results of formulas. ClosedXML 0.95.4 does not save them, and a previewer that does not calculate would show
/// empty cells, so they are written into the file afterwards. So are the cells far down a long table.
/// </summary>
sealed class Caches
{
    readonly Dictionary<string, Dictionary<string, CellValue>> _bySheet = new(StringComparer.Ordinal);
    readonly Dictionary<string, LateCells> _late = new(StringComparer.Ordinal);

    public void Remember(string sheet, string address, CellValue value)
    {
        if (!_bySheet.TryGetValue(sheet, out var cells))
        {
            _bySheet[sheet] = cells = new(StringComparer.Ordinal);
        }

        cells[address] = value;
    }

    /// <summary>The cells far down a sheet's long table; null where it has none.</summary>
    public LateCells? LateOf(string sheet) => _late.GetValueOrDefault(sheet);

    /// <summary>The long tables.</summary>
    public IEnumerable<LongTable> LongTables => _late.Values.Select(late => late.Table).OfType<LongTable>();

    /// <summary>Those of a sheet that has a long table.</summary>
    public LateCells Late(string sheet) => _late.TryGetValue(sheet, out var late) ? late : _late[sheet] = new LateCells();

    /// <summary>The cells of one sheet with formulas.</summary>
    public IReadOnlyDictionary<string, CellValue> Of(string sheet) =>
        _bySheet.TryGetValue(sheet, out var cells) ? cells : new Dictionary<string, CellValue>();
}
