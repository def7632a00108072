using System.Collections.Immutable;
using Spoolbook.Papers.Pictures;

namespace Spoolbook.Papers.WrapSummaries.Charts;

/// <summary>Bars below one another, all in one tone, each with its name and its figure; in several columns where there are many.</summary>
sealed record BarChart(string Title, ImmutableArray<Bar> Bars, Func<double, string> Mark)
{
    const double Gap = 14;

    /// <summary>A value to compare them all with; null for none.</summary>
    public Bar? Against { get; init; }

    public string Draw(ChartSize size)
    {
        var svg = new SvgWriter();
        var rows = ((Bars.Length - 1) / ColumnsIn(size)) + 1;
        var columns = ((Bars.Length - 1) / rows) + 1;
        var each = (size.Width - ((columns - 1) * Gap)) / columns;
        for (var i = 0; i < columns; i++)
        {
            var some = Bars.Skip(i * rows).Take(rows).ToList();
            svg.Within(i * (each + Gap), () => Column(svg, some, size, each, rows));
        }

        return svg.Finish(size.Width, Top(size) + (rows * size.Line) + (size.Line * 1.5), Title, Description());
    }

    // As many columns as keep it lower than a phone or half a page.
    int ColumnsIn(ChartSize size) =>
        size.IsNarrow ? (Bars.Length > 24 ? 2 : 1)
        : Bars.Length > 24 ? 3
        : Bars.Length > 12 ? 2
        : 1;

    double Top(ChartSize size) => Against is null ? 2 : size.Line + 2;

    void Column(SvgWriter svg, List<Bar> bars, ChartSize size, double width, int rows)
    {
        var name = bars.Max(b => size.WidthOf(b.Name)) + 5;
        var figure = bars.Where(b => b.Value is not null).Select(b => size.WidthOf(b.Figure)).DefaultIfEmpty(0).Max() + 5;
        var scale = new ChartScale(0, Most(), name, Math.Max(name + 10, width - figure));
        var (top, foot) = (Top(size), Top(size) + (rows * size.Line));
        var widest = Math.Max(size.WidthOf(Mark(Most())), size.WidthOf(Mark(0))) + 14;
        svg.Line(scale.Start, foot, scale.End, foot, strokeWidth: 0.4);
        foreach (var mark in scale.Marks(widest))
        {
            svg.Line(scale.At(mark), mark == 0 ? top : foot, scale.At(mark), foot + 3, strokeWidth: mark == 0 ? 0.8 : 0.4);
            size.Write(svg, scale.At(mark), foot + 3 + size.Type, Mark(mark), "middle");
        }

        if (Against is { Value: { } against })
        {
            svg.Line(scale.At(against), top - 2, scale.At(against), foot, strokeWidth: 1.2, dashes: "4 2");
            var right = scale.At(against) - (size.WidthOf(Against.Name) / 2);
            size.Write(svg, Math.Clamp(right, 0, Math.Max(0, width - size.WidthOf(Against.Name))), size.Type, Against.Name);
        }

        foreach (var (i, bar) in bars.Index())
        {
            var at = top + (i * size.Line);
            size.Write(svg, name - 5, at + size.Type, bar.Name, "end");
            if (bar.Value is { } value && value > 0)
            {
                svg.Rect(new Box(name, at + (size.Line * 0.15), Math.Max(0.6, scale.At(value) - name), size.Line * 0.7), "#777777", "none");
            }

            size.WriteClear(svg, (bar.Value is { } known ? scale.At(known) : name) + 4, at + size.Type, bar.Figure);
        }
    }

    double Most() => Bars.Append(Against).Max(b => b?.Value) is { } most and > 0 ? most : 1;

    string Description() =>
        string.Join(
            " ",
            Bars.Append(Against)
                .OfType<Bar>()
                .Select(b => b == Against ? b.Figure : $"{b.Name}: {b.Figure}.".Replace("..", ".", StringComparison.Ordinal))
        );
}
