using ClosedXML.Excel;
using Spoolbook.Papers.Wording;

namespace Spoolbook.Papers.Workbook;

/// <summary>
/// The cells far down a sheet's long table. ClosedXML 0.95.4 takes a kilobyte of memory for each cell that it saves, so it gets the first
/// rows, and of what comes below them one cell of each kind in a column, for its look. The others are written as the sheet is finished.
/// </summary>
sealed class LateCells
{
    /// <summary>The rows of a table that the library always gets.</summary>
    public const int After = 1000;

    readonly SortedDictionary<int, List<LateCell>> _rows = [];
    readonly Dictionary<(int Column, LateKind Kind), string> _samples = [];
    readonly Dictionary<string, (int Column, LateKind Kind)> _sampleAt = new(StringComparer.Ordinal);
    readonly Dictionary<(int Column, LateKind Kind), string?> _looks = [];
    int _last;

    /// <summary>The table that they are in.</summary>
    public LongTable? Table { get; set; }

    /// <summary>The rows with such cells, from the top.</summary>
    public IEnumerable<int> Rows => _rows.Keys;

    /// <summary>The cells of a row, from the left; none where it has none.</summary>
    public IReadOnlyList<LateCell> Of(int row) => _rows.TryGetValue(row, out var cells) ? cells : [];

    /// <summary>The last cell, of all that there are.</summary>
    public string Corner => Address(_last, _rows.Keys.Last());

    /// <summary>Holds a cell back; not one that the library is to write, since nothing in its column has that look yet.</summary>
    /// <param name="nth">Which row of the table it is in, from 0.</param>
    public bool HoldBack(int nth, int row, int column, CellValue value)
    {
        _last = Math.Max(_last, column);
        if (value.IsEmpty)
        {
            return nth >= After;
        }

        var kind = LateCell.KindOf(value);
        if (_samples.TryAdd((column, kind), Address(column, row)))
        {
            _sampleAt[Address(column, row)] = (column, kind);
            return false;
        }

        if (nth < After)
        {
            return false;
        }

        if (!_rows.TryGetValue(row, out var cells))
        {
            _rows[row] = cells = [];
        }

        cells.Add(new LateCell(column, kind, value));
        return true;
    }

    /// <summary>Remembers the look of a cell that the library wrote, where others are to have it.</summary>
    public void Learn(string address, string? look)
    {
        if (_sampleAt.TryGetValue(address, out var sample))
        {
            _looks[sample] = look;
        }
    }

    /// <summary>The look of a cell held back, as the file numbers it; null for the plain one.</summary>
    public string? LookOf(LateCell cell) => _looks[(cell.Column, cell.Kind)];

    public static string Address(int column, int row) => XLHelper.GetColumnLetterFromNumber(column) + PaperFormat.Number(row);
}
