using System.Globalization;
using Spoolbook.Papers.Typesetting.Drawing;
using Spoolbook.Papers.Typesetting.Fonts;
using Spoolbook.Papers.Typesetting.Setting;
using Spoolbook.Papers.Typesetting.Setup;
using Spoolbook.Pdf.Drawing;

namespace Spoolbook.Papers.Typesetting;

/// <summary>The head and foot of every page, which are not part of its text.</summary>
sealed class PageFurniture(PageSetup setup, WarningBook warnings)
{
    const double Size = 7;

    // From the margin's edge inwards to the start and end of the page's text.
    public const double HeadHeight = 16,
        FootHeight = 15;

    /// <summary>
    /// What a page gains that begins with the paper's own heading, in points: the running head would say it twice. The stamp
    /// of a draft keeps its place.
    /// </summary>
    public static double HeadRoom(PageSetup setup) => setup.Stamp.Length > 0 ? 0 : HeadHeight;

    /// <param name="isTitled">Whether the page begins with the paper's own heading.</param>
    public IEnumerable<MarkGroup> Draw(int page, int pages, bool isTitled)
    {
        var (width, height) = setup.Size;
        double left = setup.Margin,
            right = width - setup.Margin,
            head = setup.EndMargin + 5,
            foot = height - setup.EndMargin;
        var number = setup
            .Words.PageOf.Replace("{0}", page.ToString(CultureInfo.InvariantCulture), StringComparison.Ordinal)
            .Replace("{1}", pages.ToString(CultureInfo.InvariantCulture), StringComparison.Ordinal);
        var numberWidth = TextMeasure.Width(number, Face.Medium, Size, tabular: true);

        var marks = new List<PageMark>
        {
            new LineMark(left, foot - 9, right, foot - 9, 0.4, Colours.Hairline),
            new TextMark(right - numberWidth, foot, number, Face.Medium, Size, Colours.Ink, Tabular: true),
        };
        var half = (right - left) * (setup.Stamp.Length > 0 ? 0.4 : 0.62);
        if (!isTitled)
        {
            marks.AddRange(RunningHead(left, right, head, half));
        }

        marks.Add(new TextMark(left, foot, Shorten(setup.FootLeft, Face.Regular, half), Face.Regular, Size, Colours.Muted, Tabular: true));
        if (setup.Stamp.Length > 0)
        {
            marks.AddRange(Stamp(head, width / 2));
            marks.AddRange(Stamp(foot, width / 2));
        }
        yield return new MarkGroup(null, [.. marks.Where(mark => mark is not TextMark { Text: "" })]);
    }

    IEnumerable<PageMark> RunningHead(double left, double right, double baseline, double half)
    {
        var rule = setup.EndMargin + 9;
        var headRight = Shorten(setup.HeadRight, Face.Regular, half);
        var headRightWidth = TextMeasure.Width(headRight, Face.Regular, Size, tabular: true);
        yield return new LineMark(
            left,
            rule,
            right,
            rule,
            setup.Inks.HeadRule is null ? 0.4 : 0.9,
            setup.Inks.HeadRule ?? Colours.Hairline
        );
        yield return new TextMark(
            left,
            baseline,
            Shorten(setup.HeadLeft, Face.Medium, half),
            Face.Medium,
            Size,
            Colours.Ink,
            Tabular: true
        );
        yield return new TextMark(right - headRightWidth, baseline, headRight, Face.Regular, Size, Colours.Muted, Tabular: true);
    }

    IEnumerable<PageMark> Stamp(double baseline, double centre)
    {
        const double StampSize = 8.5,
            Padding = 8;
        var text = warnings.Clean(setup.Stamp);
        var width = TextMeasure.Width(text, Face.Bold, StampSize, tabular: false);
        yield return new BoxMark(
            centre - width / 2 - Padding,
            baseline - StampSize,
            width + 2 * Padding,
            StampSize * 1.35,
            new Paint(Colours.Ink, null)
        );
        yield return new TextMark(centre - width / 2, baseline - 1, text, Face.Bold, StampSize, Colours.White, Tabular: false);
    }

    /// <summary>A running head shows where the reader is; a text too long for its half of the line ends in an ellipsis.</summary>
    string Shorten(string text, Face face, double width)
    {
        text = warnings.Clean(text).Replace(Pages.Escaping.LineBreak, ' ');
        if (TextMeasure.Width(text, face, Size, tabular: true) <= width)
        {
            return text;
        }

        var shorter = new StringInfo(text);
        var length = shorter.LengthInTextElements;
        while (length > 0 && TextMeasure.Width(shorter.SubstringByTextElements(0, length) + "…", face, Size, tabular: true) > width)
        {
            length--;
        }

        return length == 0 ? "" : shorter.SubstringByTextElements(0, length).TrimEnd() + "…";
    }
}
