using Spoolbook.Shoot.Strips;

namespace Spoolbook.Papers.Pictures;

static class Patterns
{
    /// <summary>What is dark in a fade.</summary>
    public const string Wedge = "#444444";

    public static Pattern Of(Segment segment) =>
        segment.Account switch
        {
            Account.Good => Pattern.Good,
            Account.Hold => Pattern.Hold,
            Account.NoGood => Pattern.NoGood,
            Account.ShortEnd => Pattern.ShortEnd,
            _ => segment.Cause == WasteCause.Fog ? Pattern.Fog : Pattern.Waste,
        };

    public static void Draw(SvgWriter svg, Box box, Pattern pattern)
    {
        switch (pattern)
        {
            case Pattern.Good:
                svg.Rect(box, "#ffffff");
                break;
            case Pattern.Hold:
                svg.Rect(box, "#fff4cc");
                svg.Path(Hatch.Level(box, 3), "none", SvgWriter.Ink, 0.7);
                break;
            case Pattern.NoGood:
                svg.Rect(box, "#f7dcd6");
                svg.Path(Hatch.Rising(box, 5), "none", SvgWriter.Ink, 0.6);
                break;
            case Pattern.Waste:
                svg.Rect(box, "#dedede");
                svg.Path(Hatch.Upright(box, 2.2), "none", SvgWriter.Ink, 0.6);
                break;
            case Pattern.Fog:
                svg.Rect(box, "#ffffff");
                svg.Path(Hatch.Rising(box, 2.6) + Hatch.Falling(box, 2.6), "none", SvgWriter.Ink, 0.6);
                break;
            case Pattern.Twice:
                // Two heavy bars, as two pictures lie on one film. They are far heavier than what is below them.
                svg.Rect(box, "#cfe3f7");
                svg.Path(Hatch.Level(box, box.Height / 2), "none", SvgWriter.Ink, 1.9);
                break;
            case Pattern.Fade:
                svg.Rect(box, "#ffffff");
                svg.Polygon([(box.X + (box.Width / 2), box.Y), (box.X + box.Width, box.Y), (box.X + box.Width, box.Y + box.Height)], Wedge);
                break;
            default:
                // Unexposed film is no picture at all: a broken frame, and a broken line through it.
                svg.Rect(box, "none", dashes: "3 2");
                svg.Path(Hatch.Level(box, box.Height), "none", SvgWriter.Ink, 0.5, dashes: "1 4");
                break;
        }
    }
}
