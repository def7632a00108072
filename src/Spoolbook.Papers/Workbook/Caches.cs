namespace Spoolbook.Papers.Workbook;

/// <summary>
/// The results of formulas. ClosedXML 0.95.4 does not save them, and a previewer that does not calculate would show
/// empty cells, so they are written into the file afterwards.
/// </summary>
sealed class Caches
{
    readonly Dictionary<string, Dictionary<string, CellValue>> _bySheet = new(StringComparer.Ordinal);

    public void Remember(string sheet, string address, CellValue value)
    {
        if (!_bySheet.TryGetValue(sheet, out var cells))
        {
            _bySheet[sheet] = cells = new(StringComparer.Ordinal);
        }

        cells[address] = value;
    }

    /// <summary>The cells of one sheet with formulas.</summary>
    public IReadOnlyDictionary<string, CellValue> Of(string sheet) =>
        _bySheet.TryGetValue(sheet, out var cells) ? cells : new Dictionary<string, CellValue>();
}
