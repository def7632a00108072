using System.Xml.Linq;
using Spoolbook.Papers.Pages;
using Spoolbook.Papers.Typesetting.Fonts;
using Spoolbook.Papers.Typesetting.Setting;

namespace Spoolbook.Papers.Typesetting.Layout;

/// <summary>Sizes and styles of a table and its cells.</summary>
/// <param name="tightness">
/// The share of the usual white above and below the words of a row: 1, or less to save a page. Beside them half as much gives way.
/// </param>
/// <param name="fitted">How far a table of class fitted goes from compact to roomy, 0 to 1.</param>
sealed class TableLook(XElement table, TextStyle around, TableGrid grid, double tightness, double fitted)
{
    /// <summary>How much higher a row of a fitted table is than a compact one, for a share of the way to roomy.</summary>
    public static double Growth(double fitted) =>
        fitted * (((Styles.RoomySize - Styles.CompactSize) * Leading) + (2 * (UsualY - CompactY)));

    const double UsualY = 2.1,
        CompactY = 1.3,
        Leading = 1.25;

    readonly TextStyle _text = around with
    {
        Size =
            around.Size
            * (
                table.HasClass("compact") ? Styles.CompactSize
                : table.HasClass("fitted") ? Styles.CompactSize + (fitted * (Styles.RoomySize - Styles.CompactSize))
                : table.HasClass("roomy") ? Styles.RoomySize
                : Styles.TableSize
            )
            / Styles.BodySize,
    };

    /// <summary>A form: a line around every cell.</summary>
    public bool Boxed { get; } = table.HasClass("grid");

    public double PaddingX { get; } =
        (table.HasClass("compact") || table.HasClass("fitted") || table.HasClass("roomy") ? 2.6 : 3.6)
        * ((1 + tightness) / 2)
        * around.Size
        / Styles.BodySize;

    /// <summary>The space left of a cell: more for words after a column of figures, which end where the words begin.</summary>
    public double PaddingLeft(GridCell cell) =>
        PaddingX + (!Boxed && cell.Column > 0 && EndsRight(cell.Column - 1) && !EndsRight(cell.Column) ? PaddingX : 0);

    /// <summary>The space on both sides of a cell.</summary>
    public double PaddingAcross(GridCell cell) => PaddingLeft(cell) + PaddingX;

    public double PaddingY { get; } =
        (
            table.HasClass("compact") ? CompactY
            : table.HasClass("fitted") ? CompactY + (fitted * (UsualY - CompactY))
            : UsualY
        )
        * tightness
        * around.Size
        / Styles.BodySize;

    /// <summary>
    /// A row to write in, in points: 7.2 mm, since handwriting gets no smaller because the print around it is small; 6.6 mm on
    /// the shorter letter sheet, which so has as many rows as A4.
    /// </summary>
    public static double BlankHeight(Setup.Paper paper) => (paper == Setup.Paper.Letter ? 6.6 : 7.2) * 72 / 25.4;

    public TextStyle Text(GridCell cell)
    {
        var row = cell.Element.Parent!;
        var style = Styles.Common(row, _text);
        var head = row.Parent!.Is("thead");
        if (head)
        {
            style = style with { Face = Face.SemiBold, Size = style.Size * 0.93 };
        }
        else if (row.HasClass("group") || row.HasClass("total") || cell.Element.Is("th"))
        {
            style = style with { Face = Face.SemiBold };
        }

        if (IsFigures(cell))
        {
            style = style with { Tabular = true };
        }

        return Styles.Common(cell.Element, style);
    }

    public Alignment Align(GridCell cell)
    {
        if (Styles.Align(cell.Element) is { } own)
        {
            return own;
        }
        // A group's heading spans columns of figures and is still words.
        var words = cell.ColumnSpan > 1;
        return words ? Alignment.Left
            : grid.Hint(cell.Column) is { } column ? Styles.Align(column) ?? Alignment.Left
            : Alignment.Left;
    }

    public bool IsOneLine(GridCell cell) =>
        cell.Element.HasClass("nowrap")
        || grid.Hint(cell.Column) is { } column && column.HasClass("nowrap") && !cell.Element.Parent!.Parent!.Is("thead");

    bool EndsRight(int column) => grid.Hint(column) is { } hint && Styles.Align(hint) == Alignment.Right;

    bool IsFigures(GridCell cell) => cell.Element.HasClass("num") || grid.Hint(cell.Column) is { } column && column.HasClass("num");
}
