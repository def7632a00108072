using System.Text;
using Spoolbook.Film;
using Spoolbook.Papers.Wording;
using Spoolbook.Shoot.Walks;

namespace Spoolbook.Papers.Pictures;

/// <summary>The scale under a strip, in the production's unit.</summary>
static class Ruler
{
    static readonly long[] Steps = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000];

    const double LeastApart = 26;

    public static void Draw(SvgWriter svg, Span span, Func<Footage, double> x, double top, PaperFormat format)
    {
        var unit = format.RulerUnit;
        var (from, to) = (span.From.Frames / unit, span.To.Frames / unit);
        double At(double units) => x(span.From) + ((x(span.To) - x(span.From)) * (units - from) / (to - from));
        var perUnit = At(from + 1) - At(from);
        var step = Steps.FirstOrDefault(s => s * perUnit >= LeastApart, Steps[^1]);
        // One path for all: a hundred lines of their own were half of a strip's text.
        var marks = new StringBuilder();
        for (var mark = (long)Math.Ceiling(from); mark <= to; mark++)
        {
            var numbered = mark % step == 0;
            if (numbered || perUnit >= 3)
            {
                Hatch.Line(marks, At(mark), top, At(mark), top + (numbered ? 4 : 2));
            }

            if (numbered)
            {
                var anchor =
                    At(mark) - x(span.From) < 8 ? "start"
                    : x(span.To) - At(mark) < 8 ? "end"
                    : "middle";
                svg.Text(At(mark), top + 10, PaperFormat.Number(mark) + (mark == 0 ? format.RulerUnitName : ""), anchor);
            }
        }

        svg.Path(marks.ToString(), "none", SvgWriter.Ink, 0.4);
    }
}
