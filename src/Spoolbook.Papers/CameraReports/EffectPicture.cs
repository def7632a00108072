using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Papers.Pictures;
using Spoolbook.Papers.Wording;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Strips;
using Spoolbook.Shoot.Walks;

namespace Spoolbook.Papers.CameraReports;

/// <summary>
/// A close-up of an effect: its takes as lanes with their fades as wedges over a scale of frames; of a dissolve also each
/// take's exposure frame by frame in stops, thin, and all of them together, heavy.
/// </summary>
public static class EffectPicture
{
    // Between two pictures side by side.
    const double Gutter = 14;

    const int BesideOnPage = 3;
    const double Left = 16;
    const double Right = 6;
    const double Line = 8.5;
    const double LaneHeight = 9;
    const double ScaleHeight = 13;
    const double PlotHeight = 30;
    const double KeyHeight = 11;

    // From a stop and a half over to five under, where a negative shows nothing more.
    const double Most = 1.5;
    const double Least = -5;

    const int MostPoints = 160;
    const string Dashed = "3 2";

    /// <summary>
    /// The effects of a roll as SVG elements with alternative texts: three side by side on a page, one on a phone. Hand
    /// cranking is not drawn: nobody knows how it wavered.
    /// </summary>
    public static ImmutableArray<string> DrawAll(RollBook roll, PaperFormat format, PictureWidth width = PictureWidth.Page) =>
        [
            .. AlikeFades
                .Of(roll.Effects.Where(e => e.Kind != EffectKind.HandCranked))
                .Chunk(Beside(width))
                .Select(beside => DrawBeside(roll, beside, format, width)),
        ];

    // Two share the whole width: their words take fewer lines.
    static int Places(PictureWidth width, int effects) => width == PictureWidth.Page && effects == 2 ? 2 : Beside(width);

    static int Beside(PictureWidth width) => width == PictureWidth.Page ? BesideOnPage : 1;

    static string DrawBeside(RollBook roll, ImmutableArray<Effect>[] effects, PaperFormat format, PictureWidth width)
    {
        var whole = StripPicture.WidthOf(width);
        var places = Places(width, effects.Length);
        var each = (whole - ((places - 1) * Gutter)) / places;
        var svg = new SvgWriter();
        var height = 0.0;
        foreach (var (i, alike) in effects.Index())
        {
            svg.Within(i * (each + Gutter), () => height = Math.Max(height, Draw(svg, roll, alike, format, each)));
        }

        return svg.Finish(
            whole,
            height,
            string.Join(
                "; ",
                effects.Select(alike =>
                    format.Words.Fill("picture-effect-title", ("what", $"{Slates(alike)}, {string.Join(", ", Figures(alike[0], format))}"))
                )
            ),
            string.Join(" ", effects.SelectMany(alike => alike).Select(e => Describe(roll.Strip, e, format)))
        );
    }

    // Returns the height that it took.
    static double Draw(SvgWriter svg, RollBook roll, ImmutableArray<Effect> alike, PaperFormat format, double width)
    {
        var effect = alike[0];
        var shown = Around(effect.Span, roll.Strip.Loaded);
        double X(Footage frame) => Left + ((width - Left - Right) * (frame - shown.From).Frames / shown.Length.Frames);

        var y = 7.0;
        foreach (var (i, line) in Wrapped(Heading(alike, format), width - Right).Index())
        {
            svg.Text(0, y, line, bold: i == 0);
            y += Line;
        }

        foreach (var same in alike.Length == 1 ? [] : alike)
        {
            svg.Text(0, y, $"{Slates([same])}  {Place(same, format)}");
            y += Line;
        }

        y -= 4;
        foreach (var layer in effect.Layers)
        {
            DrawLane(svg, layer, shown, X, y);
            y += LaneHeight + 1.5;
        }

        var hasCurve = effect.Layers.Length > 1 && effect.Layers.Any(l => l.FadeIn != Footage.Zero || l.FadeOut != Footage.Zero);
        if (hasCurve)
        {
            y += KeyHeight;
            DrawCurves(svg, effect, shown, X, y, width, format);
            y += PlotHeight;
        }

        DrawFrames(svg, effect.Span, X, y);
        svg.Text(0, y + 10.5, format.Words["picture-frame-axis"]);
        return y + ScaleHeight;
    }

    // White is film that the take exposes in full; black, film that its shutter keeps dark.
    static void DrawLane(SvgWriter svg, Layer layer, Span shown, Func<Footage, double> x, double top)
    {
        var on = shown.Intersect(layer.Span);
        svg.Rect(new Box(x(on.From), top, x(on.To) - x(on.From), LaneHeight), "#ffffff", strokeWidth: 0.7);
        foreach (var fade in (Span[])[layer.Opening, layer.Closing])
        {
            var part = fade.Intersect(on);
            if (part.IsEmpty)
            {
                continue;
            }

            double Dark(Footage at)
            {
                var open = (at - fade.From).Frames / (double)fade.Length.Frames;
                return top + (LaneHeight * (fade == layer.Opening ? 1 - open : open));
            }

            svg.Polygon([(x(part.From), top), (x(part.To), top), (x(part.To), Dark(part.To)), (x(part.From), Dark(part.From))], "#444444");
        }
    }

    static void DrawCurves(SvgWriter svg, Effect effect, Span shown, Func<Footage, double> x, double top, double width, PaperFormat format)
    {
        svg.Rect(new Box(x(effect.Span.From), top, x(effect.Span.To) - x(effect.Span.From), PlotHeight), "#eeeeee", "none");
        for (var stops = 1; stops >= (int)Least; stops--)
        {
            svg.Line(
                Left,
                Y(stops, top),
                width - Right,
                Y(stops, top),
                strokeWidth: stops == 0 ? 0.6 : 0.25,
                dashes: stops == 0 ? null : "1 2"
            );
            if (stops % 2 == 0)
            {
                svg.Text(Left - 3, Y(stops, top) + 2.4, format.Stops(stops), "end");
            }
        }

        svg.Text(0, top - 3, format.Words["picture-stops"]);
        var key = Left + 12.0;
        foreach (var (name, dashes, stroke) in Key(effect, format))
        {
            svg.Line(key, top - 5.3, key + 14, top - 5.3, strokeWidth: stroke, dashes: dashes);
            svg.Text(key + 16, top - 3, name);
            key += 16 + SvgWriter.WidthOf(name) + 8;
        }

        foreach (var (index, layer) in effect.Layers.Index())
        {
            Curve(svg, shown.Intersect(layer.Span), f => layer.StopsAt(f), x, top, 0.7, index == 0 ? null : Dashed);
        }

        Curve(svg, effect.Span, f => Composite.Of(effect.Layers, f), x, top, 1.8, null);
    }

    static IEnumerable<(string Name, string? Dashes, double Stroke)> Key(Effect effect, PaperFormat format) =>
        effect
            .Layers.Select((layer, i) => (layer.Take.Slate.ToString(), i == 0 ? null : Dashed, 0.7))
            .Append((format.Words["picture-together"], null, 1.8));

    // A quarter more on either side shows what comes before and after.
    static Span Around(Span span, Footage loaded)
    {
        var beside = new Footage(Math.Max(4, span.Length.Frames / 4));
        return new Span(span.From - beside, span.To + beside).Within(loaded);
    }

    static string Slates(ImmutableArray<Effect> alike) =>
        string.Join(
            ", ",
            alike.Select(effect => string.Join(effect.Kind == EffectKind.Dissolve ? " → " : " + ", effect.Layers.Select(l => l.Take.Slate)))
        );

    // On several lines where one is too short for the language.
    static IEnumerable<string> Wrapped(IEnumerable<string> parts, double width)
    {
        var line = "";
        foreach (var part in parts)
        {
            var longer = line.Length == 0 ? part : line + ", " + part;
            if (line.Length > 0 && SvgWriter.WidthOf(longer, bold: true) > width)
            {
                yield return line + ",";
                line = part;
            }
            else
            {
                line = longer;
            }
        }

        yield return line;
    }

    static string Place(Effect effect, PaperFormat format) => $"{format.Length(effect.Span.From)}–{format.LengthWithUnit(effect.Span.To)}";

    // What it is, how long and where come first, whether it stands alone or for several alike, which are listed below it.
    static ImmutableArray<string> Heading(ImmutableArray<Effect> alike, PaperFormat format) =>
        Figures(alike[0], format) is var figures && alike.Length > 1
            ? figures
            : [$"{figures[0]} {Slates(alike)}", figures[1], Place(alike[0], format), .. figures[2..]];

    static ImmutableArray<string> Figures(Effect effect, PaperFormat format)
    {
        var parts = new List<string>
        {
            format.Words[
                effect.Kind switch
                {
                    EffectKind.FadeIn => "picture-fade-in",
                    EffectKind.FadeOut => "picture-fade-out",
                    EffectKind.Dissolve => "picture-dissolve",
                    _ when effect.Layers.Length == 3 => "picture-triple",
                    _ when effect.Layers.Length > 3 => "picture-exposed-often",
                    _ => "picture-superimposition",
                }
            ],
            format.Words.Fill(
                effect is { Kind: EffectKind.Dissolve, Offset.Frames: not 0 } ? "picture-over-all" : "picture-frames",
                ("frames", PaperFormat.Number(effect.Span.Length.Frames))
            ),
        };
        if (effect.Kind == EffectKind.Dissolve)
        {
            var frames = effect.Offset.Frames;
            var key =
                frames == 0 ? "picture-aligned"
                : frames > 0 ? "picture-late"
                : "picture-early";
            parts.Add(format.Words.Fill(key, ("frames", PaperFormat.Number(Math.Abs(frames)))));
            if (frames != 0)
            {
                var (closing, opening) = (effect.Layers[0].Closing, effect.Layers[1].Opening);
                parts.Add(
                    format.Words.Fill(
                        "picture-fades",
                        ("out", PaperFormat.Number(closing.Length.Frames)),
                        ("in", PaperFormat.Number(opening.Length.Frames)),
                        ("both", PaperFormat.Number(closing.Intersect(opening).Length.Frames))
                    )
                );
            }
        }

        if (effect.Kind == EffectKind.Superimposition)
        {
            parts.Add(EachOf(effect, format));
            parts.Add(EffectLines.Together(effect, format));
        }
        else if (effect.Kind == EffectKind.Dissolve)
        {
            parts.Add(format.Words.Fill("picture-worst", ("stops", format.Stops(effect.Worst))));
        }

        return [.. parts];
    }

    // Two takes at minus one make one normal exposure: the sum alone says nothing of them.
    static string EachOf(Effect effect, PaperFormat format)
    {
        var stops = effect.Layers.Select(l => l.IsLit ? format.Stops(l.BaseStops) : format.Words["black"]).ToList();
        return stops.Distinct().Count() == 1 ? format.Words.Fill("picture-each", ("stops", stops[0])) : string.Join(" + ", stops);
    }

    static string Describe(Strip strip, Effect effect, PaperFormat format)
    {
        var runs = Composite.Over(strip, effect.Span).ToList();
        return format.Words.Fill(
            "picture-effect-desc",
            ("from", format.Length(effect.Span.From)),
            ("to", format.Length(effect.Span.To)),
            ("first", format.Stops(runs[0].Stops)),
            ("last", format.Stops(runs[^1].Stops)),
            ("worst", format.Stops(runs.Select(r => r.Stops).MaxBy(Math.Abs)))
        );
    }

    static void Curve(
        SvgWriter svg,
        Span span,
        Func<Footage, double> stops,
        Func<Footage, double> x,
        double top,
        double strokeWidth,
        string? dashes
    )
    {
        var frame = new Footage(1);
        var step = Math.Max(1, span.Length.Frames / MostPoints);
        var points = new List<(double X, double Y)>();
        for (var at = span.From; at < span.To; at += new Footage(step))
        {
            // A frame's exposure is drawn at its middle.
            points.Add(((x(at) + x(at + frame)) / 2, Y(stops(at), top)));
        }

        if (points.Count > 0)
        {
            svg.Polyline([(x(span.From), points[0].Y), .. points, (x(span.To), points[^1].Y)], strokeWidth, dashes);
        }
    }

    // Counts frames from the effect's first, with a tick for each while ticks are far enough apart.
    static void DrawFrames(SvgWriter svg, Span span, Func<Footage, double> x, double bottom)
    {
        var frames = span.Length.Frames;
        var perFrame = (x(span.To) - x(span.From)) / frames;
        var step = new[] { 1L, 2, 4, 8, 12, 24, 48, 96, 240, 480, 960, 2400 }.FirstOrDefault(s => s * perFrame >= 20, 4800);
        for (var i = 0L; i <= frames; i++)
        {
            var at = x(span.From) + (i * perFrame);
            var numbered = i == frames || (i % step == 0 && (frames - i) * perFrame >= 14);
            if (numbered || perFrame >= 1.8)
            {
                svg.Line(at, bottom, at, bottom + (numbered ? 4 : 2), strokeWidth: 0.4);
            }

            if (numbered)
            {
                svg.Text(at, bottom + 10.5, PaperFormat.Number(i), "middle");
            }
        }
    }

    static double Y(double stops, double top) => top + (PlotHeight * (Most - Math.Clamp(stops, Least, Most)) / (Most - Least));
}
