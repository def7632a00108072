using System.Xml.Linq;
using Spoolbook.Papers.Pages;
using Spoolbook.Papers.Typesetting.Setup;

namespace Spoolbook.Papers.Typesetting.Layout;

/// <summary>Where the labels of a <c>section.sheet</c> lie on their sheets, in points from the sheet's corner.</summary>
sealed record LabelPlaces(int Columns, int Rows, int Skip, double Width, double Height)
{
    public double Left { get; init; }

    public double Top { get; init; }

    public double GapX { get; init; }

    public double GapY { get; init; }

    public static LabelPlaces Of(XElement section, PageSetup setup)
    {
        var (pageWidth, pageHeight) = setup.Size;
        double Length(string name, double fallback) => TemplateLength.Points((string?)section.Attribute(name), fallback);
        int Count(string name, int fallback) => Math.Max(1, (int)Length(name, fallback));
        var (columns, rows) = (Count("data-cols", 2), Count("data-rows", 5));
        var width = Length("data-width", (pageWidth - 2 * setup.Margin) / columns);
        var height = Length("data-height", (pageHeight - 2 * setup.EndMargin) / rows);
        var (gapX, gapY) = (Length("data-gap-x", 0), Length("data-gap-y", 0));
        return new LabelPlaces(columns, rows, (int)Length("data-skip", 0) % (columns * rows), width, height)
        {
            Left = Length("data-left", (pageWidth - columns * width - (columns - 1) * gapX) / 2),
            Top = Length("data-top", (pageHeight - rows * height - (rows - 1) * gapY) / 2),
            GapX = gapX,
            GapY = gapY,
        };
    }

    /// <summary>The lower edge of the last row.</summary>
    public double Bottom => Top + Rows * Height + (Rows - 1) * GapY;

    /// <summary>The labels sheet by sheet, place by place; null for a place that was used before or is left over.</summary>
    public IEnumerable<IReadOnlyList<XElement?>> Sheets(IReadOnlyList<XElement> labels) =>
        labels.Count == 0 ? [] : Enumerable.Repeat<XElement?>(null, Skip).Concat(labels).Chunk(Columns * Rows).Select(Filled);

    /// <summary>The corner of a place, counted from the left and down.</summary>
    public (double X, double Y) Corner(int place) => (Left + place % Columns * (Width + GapX), Top + place / Columns * (Height + GapY));

    IReadOnlyList<XElement?> Filled(XElement?[] sheet) => [.. sheet, .. Enumerable.Repeat<XElement?>(null, Columns * Rows - sheet.Length)];
}
