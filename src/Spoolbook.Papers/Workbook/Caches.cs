namespace Spoolbook.Papers.Workbook;

/// <summary>
/// What the formulas come to. ClosedXML 0.95.4 saves none of it, and a previewer that does not calculate
/// would show empty cells, so it is written into the file afterwards.
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

    /// <summary>The cells of one sheet that hold formulas.</summary>
    public IReadOnlyDictionary<string, CellValue> Of(string sheet) =>
        _bySheet.TryGetValue(sheet, out var cells) ? cells : new Dictionary<string, CellValue>();
}
