using Spoolbook.Papers.Typesetting.Drawing;
using Spoolbook.Papers.Typesetting.Fonts;
using Spoolbook.Pdf.Drawing;

namespace Spoolbook.Papers.Typesetting.Setting;

/// <summary>One set line: runs from left to right.</summary>
sealed class TextLine(IReadOnlyList<InlineRun> runs, double emptySize)
{
    /// <summary>
    /// Leaves out a blank at the line's end. It is drawn, so that copied words of two lines do not run together, but
    /// not measured.
    /// </summary>
    public double Width { get; } = runs.Sum((run) => run.Style.Width(run.Text)) - TrailingBlank(runs);

    public double Size { get; } = runs.Count == 0 ? emptySize : runs.Max(run => run.Style.Size);

    public IReadOnlyList<InlineRun> Runs { get; } = runs;

    /// <summary>The pieces of the line, its top at zero, set within a column.</summary>
    public IEnumerable<MarkGroup> Pieces(double x, double width, double lineHeight, Alignment alignment)
    {
        var baseline = TextMeasure.Baseline(Face.Regular, Size, lineHeight);
        var pen =
            x
            + alignment switch
            {
                Alignment.Right => width - Width,
                Alignment.Center => (width - Width) / 2,
                _ => 0,
            };
        foreach (var run in Runs)
        {
            var runWidth = run.Style.Width(run.Text);
            if (Background(run, pen, baseline, runWidth) is { } background)
            {
                yield return MarkGroup.Furniture(background);
            }

            var text = new TextMark(
                pen + run.Style.Padding,
                baseline - run.Style.Rise,
                run.Text,
                run.Style.Face,
                run.Style.Size,
                run.Style.Colour,
                run.Style.Tabular
            );
            yield return run.Address is { } address
                ? new MarkGroup(run.Owner, [text, new LinkMark(pen, 0, runWidth, lineHeight, address, run.Owner)])
                : new MarkGroup(run.Owner, [text]);
            pen += runWidth;
        }
    }

    static BoxMark? Background(InlineRun run, double x, double baseline, double width)
    {
        var size = run.Style.Size;
        var paint = run.Style.Decoration switch
        {
            Decoration.Boxed => new Paint(null, Colours.Rule, 0.5),
            Decoration.Inverse => new Paint(Colours.Ink, null),
            _ => null,
        };
        return paint is null ? null : new BoxMark(x + size * 0.04, baseline - size * 0.88, width - size * 0.08, size * 1.12, paint);
    }

    static double TrailingBlank(IReadOnlyList<InlineRun> runs) =>
        runs.Count > 0 && runs[^1].Text.EndsWith(' ') ? runs[^1].Style.Width(" ") - 2 * runs[^1].Style.Padding : 0;
}
