using System.Globalization;
using System.Text;
using Spoolbook.Papers.Typesetting.Fonts;

namespace Spoolbook.Papers.Pictures;

/// <summary>Writes the few SVG elements that every paper can draw, numbers with two decimals.</summary>
sealed class SvgWriter
{
    public const string Ink = "#222222";

    /// <summary>The smallest type that survives a photocopy.</summary>
    public const double TypeSize = 7;

    readonly StringBuilder _body = new();

    public void Rect(Box box, string fill, string stroke = Ink, double strokeWidth = 0.5, string? dashes = null) =>
        _body.Append(
            CultureInfo.InvariantCulture,
            $"<rect x=\"{N(box.X)}\" y=\"{N(box.Y)}\" width=\"{N(box.Width)}\" height=\"{N(box.Height)}\" "
                + $"fill=\"{fill}\"{Stroke(stroke, strokeWidth, dashes)}/>"
        );

    public void Line(double x1, double y1, double x2, double y2, string stroke = Ink, double strokeWidth = 0.5, string? dashes = null) =>
        _body.Append(
            CultureInfo.InvariantCulture,
            $"<line x1=\"{N(x1)}\" y1=\"{N(y1)}\" x2=\"{N(x2)}\" y2=\"{N(y2)}\"{Stroke(stroke, strokeWidth, dashes)}/>"
        );

    /// <summary>A path; nothing if it has no steps.</summary>
    public void Path(string d, string fill, string stroke, double strokeWidth = 0.5, string? dashes = null)
    {
        if (d.Length > 0)
        {
            _body.Append(CultureInfo.InvariantCulture, $"<path d=\"{d}\" fill=\"{fill}\"{Stroke(stroke, strokeWidth, dashes)}/>");
        }
    }

    public void Polyline(IEnumerable<(double X, double Y)> points, double strokeWidth, string? dashes = null) =>
        _body.Append(
            CultureInfo.InvariantCulture,
            $"<polyline points=\"{Points(points)}\" fill=\"none\"{Stroke(Ink, strokeWidth, dashes)}/>"
        );

    public void Polygon(IEnumerable<(double X, double Y)> points, string fill) =>
        _body.Append(CultureInfo.InvariantCulture, $"<polygon points=\"{Points(points)}\" fill=\"{fill}\" stroke=\"none\"/>");

    /// <param name="anchor">start, middle or end.</param>
    public void Text(double x, double y, string text, string anchor = "start", bool bold = false, double size = TypeSize) =>
        _body.Append(
            CultureInfo.InvariantCulture,
            $"<text x=\"{N(x)}\" y=\"{N(y)}\" font-size=\"{N(size)}\" text-anchor=\"{anchor}\"{(bold ? " font-weight=\"bold\"" : "")} "
                + $"fill=\"{Ink}\">{Escaped(text)}</text>"
        );

    /// <summary>A text in a size and a colour of its own, half bold.</summary>
    public void Coloured(double x, double y, string text, double size, string fill) =>
        _body.Append(
            CultureInfo.InvariantCulture,
            $"<text x=\"{N(x)}\" y=\"{N(y)}\" font-size=\"{N(size)}\" font-weight=\"600\" fill=\"{fill}\">{Escaped(text)}</text>"
        );

    /// <summary>Finished elements, at another place and size.</summary>
    public void Placed(string elements, double x, double y, double scale) =>
        _body.Append(
            CultureInfo.InvariantCulture,
            $"<g transform=\"translate({N(x)} {N(y)}) scale({scale.ToString("0.######", CultureInfo.InvariantCulture)})\">{elements}</g>"
        );

    /// <summary>Draws with the origin at another place.</summary>
    public void Within(double x, Action draw)
    {
        _body.Append(CultureInfo.InvariantCulture, $"<g transform=\"translate({N(x)} 0)\">");
        draw();
        _body.Append("</g>");
    }

    /// <summary>The whole picture, with its alternative text.</summary>
    /// <param name="fromLeft">Whether it is at the left of more room than it needs.</param>
    public string Finish(double width, double height, string title, string description, bool fromLeft = false) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {N(width)} {N(height)}\" "
                + $"role=\"img\"{(fromLeft ? " preserveAspectRatio=\"xMinYMid meet\"" : "")}><title>{Escaped(title)}</title>"
                + $"{(description.Length == 0 ? "" : $"<desc>{Escaped(description)}</desc>")}{_body}</svg>"
        );

    /// <summary>How wide a text will be.</summary>
    public static double WidthOf(string text, bool bold = false, double size = TypeSize) =>
        TextMeasure.Width(text, bold ? Face.Bold : Face.Regular, size, tabular: true);

    /// <summary>A number in SVG's notation.</summary>
    public static string N(double number) => number.ToString("0.##", CultureInfo.InvariantCulture);

    static string Points(IEnumerable<(double X, double Y)> points) => string.Join(' ', points.Select(p => N(p.X) + "," + N(p.Y)));

    static string Stroke(string stroke, double width, string? dashes) =>
        stroke == "none"
            ? " stroke=\"none\""
            : $" stroke=\"{stroke}\" stroke-width=\"{N(width)}\"{(dashes is null ? "" : $" stroke-dasharray=\"{dashes}\"")}";

    static string Escaped(string text) => System.Security.SecurityElement.Escape(text);
}
