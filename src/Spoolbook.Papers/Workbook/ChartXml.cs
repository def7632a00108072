using System.Globalization;
using System.Xml.Linq;

namespace Spoolbook.Papers.Workbook;

/// <summary>A chart in the form of a spreadsheet (DrawingML), with what its cells come to for programs that do not compute.</summary>
static class ChartXml
{
    const string Ink = "1F2A37";
    const string Quiet = "6B7280";
    const string Grid = "D5DAE1";

    static readonly XNamespace C = "http://schemas.openxmlformats.org/drawingml/2006/chart";
    static readonly XNamespace A = "http://schemas.openxmlformats.org/drawingml/2006/main";

    // The first line is what happened; the others, from likely to sure, are told apart by dashes on a grey copy too.
    static readonly (string Colour, string Dash, int Width)[] Lines =
    [
        (Ink, "solid", 28575),
        ("3B82A0", "sysDash", 19050),
        ("B45309", "solid", 19050),
        ("9D174D", "sysDot", 22225),
    ];

    public static XElement Of(BookChart chart) =>
        new(
            C + "chartSpace",
            new XAttribute(XNamespace.Xmlns + "c", C),
            new XAttribute(XNamespace.Xmlns + "a", A),
            Value("roundedCorners", 0),
            new XElement(
                C + "chart",
                Value("autoTitleDeleted", 1),
                new XElement(
                    C + "plotArea",
                    new XElement(C + "layout"),
                    chart.IsBars ? Bars(chart) : LinesOf(chart),
                    Labels(chart),
                    Values(chart)
                ),
                chart.Series.Count > 1 ? new XElement(C + "legend", Value("legendPos", "r"), Value("overlay", 0), Letters(900, Ink)) : null,
                Value("plotVisOnly", 0),
                Value("dispBlanksAs", "gap")
            ),
            new XElement(C + "spPr", new XElement(A + "noFill"), new XElement(A + "ln", new XElement(A + "noFill"))),
            Letters(900, Ink)
        );

    static XElement Bars(BookChart chart) =>
        new(
            C + "barChart",
            Value("barDir", "bar"),
            Value("grouping", "clustered"),
            Value("varyColors", 0),
            chart.Series.Select(
                (s, i) =>
                    Series(
                        s,
                        i,
                        [
                            new XElement(C + "spPr", Fill("8AA4BE")),
                            Value("invertIfNegative", 0),
                            new XElement(
                                C + "dLbls",
                                new XElement(
                                    C + "numFmt",
                                    new XAttribute("formatCode", $"#,##0\" {chart.Unit}\""),
                                    new XAttribute("sourceLinked", 0)
                                ),
                                new XElement(C + "spPr", new XElement(A + "noFill"), new XElement(A + "ln", new XElement(A + "noFill"))),
                                Letters(900, Ink),
                                Value("dLblPos", "outEnd"),
                                Value("showLegendKey", 0),
                                Value("showVal", 1),
                                Value("showCatName", 0),
                                Value("showSerName", 0),
                                Value("showPercent", 0),
                                Value("showBubbleSize", 0)
                            ),
                        ],
                        chart.Labels
                    )
            ),
            Value("gapWidth", 45),
            Value("axId", 1),
            Value("axId", 2)
        );

    static XElement LinesOf(BookChart chart) =>
        new(
            C + "lineChart",
            Value("grouping", "standard"),
            Value("varyColors", 0),
            chart.Series.Select(
                (s, i) =>
                    Series(
                        s,
                        i,
                        [
                            new XElement(
                                C + "spPr",
                                new XElement(
                                    A + "ln",
                                    new XAttribute("w", Lines[i].Width),
                                    new XAttribute("cap", "rnd"),
                                    Fill(Lines[i].Colour),
                                    new XElement(A + "prstDash", new XAttribute("val", Lines[i].Dash))
                                )
                            ),
                            new XElement(C + "marker", Value("symbol", "none")),
                        ],
                        chart.Labels,
                        Value("smooth", 0)
                    )
            ),
            Value("marker", 1),
            Value("axId", 1),
            Value("axId", 2)
        );

    static XElement Series(ChartColumn column, int index, IEnumerable<XElement> look, ChartColumn labels, XElement? last = null) =>
        new(
            C + "ser",
            Value("idx", index),
            Value("order", index),
            new XElement(C + "tx", Words(column.HeadAt, [column.Head])),
            look,
            new XElement(C + "cat", Words(labels.At, [.. labels.Cells.Select(c => c.Text ?? "")])),
            new XElement(C + "val", Numbers(column)),
            last
        );

    static XElement Words(string at, IReadOnlyList<string> words) =>
        new(
            C + "strRef",
            new XElement(C + "f", at),
            new XElement(
                C + "strCache",
                Value("ptCount", words.Count),
                words.Select((w, i) => new XElement(C + "pt", new XAttribute("idx", i), new XElement(C + "v", w)))
            )
        );

    static XElement Numbers(ChartColumn column) =>
        new(
            C + "numRef",
            new XElement(C + "f", column.At),
            new XElement(
                C + "numCache",
                new XElement(C + "formatCode", "#,##0"),
                Value("ptCount", column.Cells.Count),
                column
                    .Cells.Index()
                    .Where(c => c.Item.Number is not null)
                    .Select(c => new XElement(
                        C + "pt",
                        new XAttribute("idx", c.Index),
                        new XElement(C + "v", c.Item.Number!.Value.ToString("R", CultureInfo.InvariantCulture))
                    ))
            )
        );

    // Of bars, the first is at the top.
    static XElement Labels(BookChart chart) =>
        new(
            C + "catAx",
            Value("axId", 1),
            new XElement(C + "scaling", Value("orientation", chart.IsBars ? "maxMin" : "minMax")),
            Value("delete", 0),
            Value("axPos", chart.IsBars ? "l" : "b"),
            Value("majorTickMark", "none"),
            Value("minorTickMark", "none"),
            Value("tickLblPos", "low"),
            Line(Quiet),
            Letters(900, Ink),
            Value("crossAx", 2),
            Value("crosses", "autoZero"),
            Value("auto", 0),
            Value("lblAlgn", "ctr"),
            Value("lblOffset", 100),
            Value("noMultiLvlLbl", 1)
        );

    static XElement Values(BookChart chart) =>
        new(
            C + "valAx",
            Value("axId", 2),
            new XElement(C + "scaling", Value("orientation", "minMax")),
            Value("delete", 0),
            Value("axPos", chart.IsBars ? "b" : "l"),
            new XElement(C + "majorGridlines", Line(Grid)),
            new XElement(C + "numFmt", new XAttribute("formatCode", $"#,##0\" {chart.Unit}\""), new XAttribute("sourceLinked", 0)),
            Value("majorTickMark", "none"),
            Value("minorTickMark", "none"),
            Value("tickLblPos", chart.IsBars ? "high" : "nextTo"),
            new XElement(C + "spPr", new XElement(A + "ln", new XElement(A + "noFill"))),
            Letters(800, Quiet),
            Value("crossAx", 1),
            Value("crosses", "autoZero"),
            Value("crossBetween", chart.IsBars ? "between" : "midCat")
        );

    static XElement Line(string colour) => new(C + "spPr", new XElement(A + "ln", new XAttribute("w", 6350), Fill(colour)));

    static XElement Fill(string colour) => new(A + "solidFill", new XElement(A + "srgbClr", new XAttribute("val", colour)));

    static XElement Letters(int size, string colour) =>
        new(
            C + "txPr",
            new XElement(A + "bodyPr"),
            new XElement(A + "lstStyle"),
            new XElement(
                A + "p",
                new XElement(A + "pPr", new XElement(A + "defRPr", new XAttribute("sz", size), Fill(colour))),
                new XElement(A + "endParaRPr", new XAttribute("lang", "en"))
            )
        );

    static XElement Value(string name, object value) => new(C + name, new XAttribute("val", value));
}
