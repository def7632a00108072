using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Papers.Pictures;
using Spoolbook.Papers.Wording;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Strips;
using Spoolbook.Shoot.Walks;

namespace Spoolbook.Papers.CameraReports;

/// <summary>
/// A close-up of an effect: each take's exposure frame by frame in stops, thin, and all of them together, heavy, over a
/// scale of frames.
/// </summary>
public static class EffectPicture
{
    // Between two pictures side by side.
    const double Gutter = 14;

    const int BesideOnPage = 3;
    const double Left = 16;
    const double Right = 6;
    const double Line = 8.5;
    const double Top = 27;
    const double PlotHeight = 33;
    const double Height = Top + PlotHeight + 13;

    // From a stop and a half over to five under, where a negative shows nothing more.
    const double Most = 1.5;
    const double Least = -5;

    const int MostPoints = 160;

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

    static int Beside(PictureWidth width) => width == PictureWidth.Page ? BesideOnPage : 1;

    static string DrawBeside(RollBook roll, ImmutableArray<Effect>[] effects, PaperFormat format, PictureWidth width)
    {
        var whole = StripPicture.WidthOf(width);
        var each = (whole - ((Beside(width) - 1) * Gutter)) / Beside(width);
        var svg = new SvgWriter();
        foreach (var (i, alike) in effects.Index())
        {
            svg.Within(i * (each + Gutter), () => Draw(svg, roll, alike, format, each));
        }

        return svg.Finish(
            whole,
            Height,
            string.Join(
                "; ",
                effects.Select(alike =>
                    format.Words.Fill("picture-effect-title", ("what", $"{Slates(alike)}, {string.Join(", ", Figures(alike[0], format))}"))
                )
            ),
            string.Join(" ", effects.SelectMany(alike => alike).Select(e => Describe(roll.Strip, e, format)))
        );
    }

    static void Draw(SvgWriter svg, RollBook roll, ImmutableArray<Effect> alike, PaperFormat format, double width)
    {
        var effect = alike[0];
        var shown = Around(effect.Span, roll.Strip.Loaded);
        double X(Footage frame) => Left + ((width - Left - Right) * (frame - shown.From).Frames / shown.Length.Frames);

        svg.Text(0, 7, Slates(alike), bold: true);
        if (alike.Length == 1)
        {
            svg.Text(width - Right, 7, $"{format.Length(effect.Span.From)} – {format.LengthWithUnit(effect.Span.To)}", "end");
        }

        foreach (var (line, figures) in Lines(Figures(effect, format), width - Right).Index())
        {
            svg.Text(0, 7 + ((line + 1) * Line), figures);
        }

        DrawGrid(svg, effect.Span, X, width, format);
        foreach (var (index, layer) in effect.Layers.Index())
        {
            Curve(svg, shown.Intersect(layer.Span), f => layer.StopsAt(f), X, 0.7, index == 0 ? null : "3 2");
        }

        // Draws light only where a take is: black between takes is no curve.
        foreach (var segment in roll.Strip.SegmentsOver(shown).Where(s => s.Layers.Any(l => l.IsLit)))
        {
            Curve(svg, shown.Intersect(segment.Span), f => Composite.Of(segment.Layers, f), X, 1.8, null);
        }

        DrawFrames(svg, effect.Span, X);
    }

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

    // On two lines where one is too short for the language.
    static IEnumerable<string> Lines(ImmutableArray<string> figures, double width)
    {
        var fit = figures.Length;
        while (fit > 1 && SvgWriter.WidthOf(string.Join(", ", figures[..fit])) > width)
        {
            fit--;
        }

        yield return string.Join(", ", figures[..fit]) + (fit < figures.Length ? "," : "");
        if (fit < figures.Length)
        {
            yield return string.Join(", ", figures[fit..]);
        }
    }

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
                    _ => "picture-superimposition",
                }
            ],
            format.Words.Fill("picture-frames", ("frames", PaperFormat.Number(effect.Span.Length.Frames))),
        };
        if (effect.Kind == EffectKind.Dissolve)
        {
            var frames = effect.Offset.Frames;
            var key =
                frames == 0 ? "picture-aligned"
                : frames > 0 ? "picture-late"
                : "picture-early";
            parts.Add(format.Words.Fill(key, ("frames", PaperFormat.Number(Math.Abs(frames)))));
        }

        if (effect.Kind is EffectKind.Dissolve or EffectKind.Superimposition)
        {
            parts.Add(format.Words.Fill("picture-worst", ("stops", format.Stops(effect.Worst))));
        }

        return [.. parts];
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

    static void DrawGrid(SvgWriter svg, Span span, Func<Footage, double> x, double width, PaperFormat format)
    {
        svg.Rect(new Box(x(span.From), Top, x(span.To) - x(span.From), PlotHeight), "#eeeeee", "none");
        for (var stops = 1; stops >= (int)Least; stops--)
        {
            svg.Line(Left, Y(stops), width - Right, Y(stops), strokeWidth: stops == 0 ? 0.6 : 0.25, dashes: stops == 0 ? null : "1 2");
            if (stops % 2 == 0)
            {
                svg.Text(Left - 3, Y(stops) + 2.4, format.Stops(stops), "end");
            }
        }

        svg.Text(width - Right, Top - 3, format.Words["picture-stops"], "end");
    }

    static void Curve(SvgWriter svg, Span span, Func<Footage, double> stops, Func<Footage, double> x, double strokeWidth, string? dashes)
    {
        var frame = new Footage(1);
        var step = Math.Max(1, span.Length.Frames / MostPoints);
        var points = new List<(double X, double Y)>();
        for (var at = span.From; at < span.To; at += new Footage(step))
        {
            // A frame's exposure is drawn at its middle.
            points.Add(((x(at) + x(at + frame)) / 2, Y(stops(at))));
        }

        if (points.Count > 0)
        {
            svg.Polyline([(x(span.From), points[0].Y), .. points, (x(span.To), points[^1].Y)], strokeWidth, dashes);
        }
    }

    // Counts frames from the effect's first, with a tick for each while ticks are far enough apart.
    static void DrawFrames(SvgWriter svg, Span span, Func<Footage, double> x)
    {
        const double bottom = Top + PlotHeight;
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

    static double Y(double stops) => Top + (PlotHeight * (Most - Math.Clamp(stops, Least, Most)) / (Most - Least));
}
