using System.Globalization;

namespace Spoolbook.Entry.Tables;

/// <summary>How much of a table is read: far more than any shoot needs, and too little to exhaust the machine.</summary>
static class Limits
{
    /// <summary>The largest file, in bytes.</summary>
    public const int MostBytes = 20_000_000;

    /// <summary>The largest unpacked size of one part of a workbook, in bytes.</summary>
    public const int MostUnpacked = 80_000_000;

    /// <summary>The most parts of a workbook.</summary>
    public const int MostParts = 2_000;

    /// <summary>The most sheets to search for the takes.</summary>
    public const int MostSheets = 30;

    public const int MostRows = 20_000;

    public const int MostColumns = 200;

    public static void CheckRows(string name, int rows)
    {
        if (rows >= MostRows)
        {
            throw new TableFault(
                name,
                string.Create(CultureInfo.InvariantCulture, $"More than {MostRows} rows are in it."),
                "Take in one production's takes at a time."
            );
        }
    }

    public static void CheckColumns(string name, int row, int columns)
    {
        if (columns > MostColumns)
        {
            throw new TableFault(
                string.Create(CultureInfo.InvariantCulture, $"{name}:{row}"),
                string.Create(CultureInfo.InvariantCulture, $"More than {MostColumns} columns are in it."),
                "Keep the columns of the Takes sheet, and those that you need beside them."
            );
        }
    }
}
