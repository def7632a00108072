using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Papers.Wording;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Strips;
using Spoolbook.Shoot.Walks;

namespace Spoolbook.Papers.Pictures;

/// <summary>
/// A roll drawn to scale: a lane for each exposure of the same film with its takes and fades, the account of every frame
/// below, and a ruler. A roll with many takes gets the rows that its labels need.
/// </summary>
public static class StripPicture
{
    const double NameWidth = 28;
    const int MostRows = 8;
    const double MostForName = 150;

    // More rows than this for the slates alone make a picture that nobody takes in at a glance: numbers instead.
    const int MostForSlates = 3;

    /// <summary>The picture as an SVG element, with its alternative text.</summary>
    /// <param name="account">
    /// Its account in centimetres, for a legend of its own with the film of each kind; null where several share one.
    /// </param>
    public static string Draw(RollBook roll, PaperFormat format, PictureWidth width = PictureWidth.Page, MetricTally? account = null)
    {
        var svg = new SvgWriter();
        var rows = Rows(roll.Strip, format, width);
        var top = 1.0;
        foreach (var row in rows)
        {
            row.Draw(svg, top);
            top += row.Height + 4;
        }

        if (account is not null)
        {
            top += Legend.OfRoll(roll, account, format).Draw(svg, WidthOf(width), top);
        }

        return svg.Finish(WidthOf(width), top, StripDescription.Title(roll, format), StripDescription.Describe(roll, format));
    }

    /// <summary>The picture in one low row with the roll's name before it, and only the labels that fit into their takes.</summary>
    /// <param name="gutter">Room for the name, as <see cref="GutterOf"/> has it for all the rolls.</param>
    public static string DrawBrief(RollBook roll, PaperFormat format, double gutter)
    {
        var svg = new SvgWriter();
        var row = StripRow.Brief(roll, Exposures(roll.Strip), gutter, WidthOf(PictureWidth.Page) - gutter - 1, format);
        row.Draw(svg, 0.5);
        return svg.Finish(
            WidthOf(PictureWidth.Page),
            row.Height - 0.3,
            StripDescription.Title(roll, format),
            StripDescription.Describe(roll, format)
        );
    }

    /// <summary>
    /// The room that the rolls' names, and those of their exposures, need before their strips, so that all strips start
    /// below one another.
    /// </summary>
    public static double GutterOf(IReadOnlyCollection<RollBook> rolls, PaperFormat format) =>
        Math.Min(
            MostForName,
            5
                + rolls
                    .Select(r => SvgWriter.WidthOf(r.Roll.Name.Value, bold: true))
                    .Concat(
                        from exposure in rolls.Select(r => Exposures(r.Strip).Values.DefaultIfEmpty(1).Max())
                        where exposure > 1
                        select SvgWriter.WidthOf(StripRow.NameOf(exposure, format))
                    )
                    .DefaultIfEmpty(0)
                    .Max()
        );

    /// <summary>The legend of some rolls' patterns, as a picture of its own.</summary>
    public static string DrawLegend(IEnumerable<RollBook> rolls, PaperFormat format, PictureWidth width = PictureWidth.Page)
    {
        var svg = new SvgWriter();
        var legend = Legend.OfAll(rolls, format);
        var height = legend.Draw(svg, WidthOf(width), 1);
        return svg.Finish(WidthOf(width), height + 1, format.Words["picture-legend"], legend.Text);
    }

    /// <summary>The width in units: on paper a unit is about a point, on a phone a little more than a pixel.</summary>
    internal static double WidthOf(PictureWidth width) => width == PictureWidth.Page ? 540 : 260;

    // As few rows as give every take its label. Beyond the most rows, labels without room are left out: the report's table has them all.
    static ImmutableArray<StripRow> Rows(Strip strip, PaperFormat format, PictureWidth width)
    {
        var exposures = Exposures(strip);
        for (var count = width == PictureWidth.Page ? 1 : 3; ; count++)
        {
            var rows = Cut(strip.Loaded, count)
                .Select(s =>
                    StripRow.TryLayOut(
                        strip,
                        exposures,
                        s,
                        NameWidth,
                        WidthOf(width) - NameWidth - 1,
                        format,
                        byNumber: count > MostForSlates,
                        takesAll: count >= MostRows
                    )
                )
                .ToList();
            if (!rows.Contains(null))
            {
                return [.. rows.OfType<StripRow>()];
            }
        }
    }

    // A take over film that was exposed before is one exposure more of it, however often the roll was rewound. Where the
    // take before it has that lane, it goes into a free one: the third of a chain of dissolves is no third exposure.
    static Dictionary<Layer, int> Exposures(Strip strip)
    {
        var exposures = new Dictionary<Layer, int>(ReferenceEqualityComparer.Instance);
        foreach (var layer in strip.Layers.OrderBy(l => l.Index))
        {
            var below = exposures.Where(e => e.Key.Span.Overlaps(layer.Span)).ToList();
            var deepest = below
                .Select(e =>
                    below.Count(o => o.Key.Span.From.Frames <= e.Key.Span.From.Frames && e.Key.Span.From.Frames < o.Key.Span.To.Frames)
                )
                .DefaultIfEmpty(0)
                .Max();
            exposures[layer] = Enumerable
                .Range(1, below.Count)
                .Prepend(deepest + 1)
                .Append(below.Count + 1)
                .First(lane => below.All(e => e.Value != lane));
        }

        return exposures;
    }

    static IEnumerable<Span> Cut(Footage loaded, int count)
    {
        var rows = Math.Min(count, loaded.Frames);
        for (var i = 0L; i < rows; i++)
        {
            yield return new Span(new Footage(loaded.Frames * i / rows), new Footage(loaded.Frames * (i + 1) / rows));
        }
    }
}
