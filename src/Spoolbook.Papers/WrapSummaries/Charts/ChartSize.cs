using Spoolbook.Papers.Pictures;

namespace Spoolbook.Papers.WrapSummaries.Charts;

/// <summary>The measures of a chart: on paper a unit is about a point, on a phone a little more than a pixel.</summary>
/// <param name="Type">The size of its type.</param>
sealed record ChartSize(double Width, double Type)
{
    // A browser's fallback sans serif is up to a sixth wider than Inter.
    const double OtherLetters = 1.17;

    public static ChartSize Of(PictureWidth width) => width == PictureWidth.Page ? new(540, 8) : new(300, 9.5);

    public bool IsNarrow => Width < 400;

    /// <summary>From one line of type to the next.</summary>
    public double Line => Type * 1.4;

    /// <summary>The room that a text needs, in the wider letters of a browser's own font.</summary>
    public double WidthOf(string text, bool bold = false) => OtherLetters * SvgWriter.WidthOf(text, bold, Type);

    public void Write(SvgWriter svg, double x, double y, string text, string anchor = "start", bool bold = false) =>
        svg.Text(x, y, text, anchor, bold, Type);

    /// <summary>Writes on a plate of its own, so that no line crosses the text.</summary>
    public void WriteClear(SvgWriter svg, double x, double y, string text, bool bold = false)
    {
        svg.Rect(new Box(x - 1, y - Type, WidthOf(text, bold), Type * 1.2), "#ffffff", "none");
        Write(svg, x, y, text, bold: bold);
    }
}
