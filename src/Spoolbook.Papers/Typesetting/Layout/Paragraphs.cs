using System.Globalization;
using System.Xml.Linq;
using Spoolbook.Papers.Pages;
using Spoolbook.Papers.Typesetting.Drawing;
using Spoolbook.Papers.Typesetting.Setting;
using Spoolbook.Pdf.Structure;

namespace Spoolbook.Papers.Typesetting.Layout;

/// <summary>Headings, paragraphs and plain lines of text.</summary>
static class Paragraphs
{
    /// <summary>From line to line of a text, in its type size.</summary>
    public const double Leading = 1.32;

    const double HeadingLeading = 1.2;

    // A writing line needs that much room below the text for a pen.
    const double WritingHeight = 20;

    public static void Heading(BlockComposer composer, XElement element, Scope scope, Galley galley)
    {
        var level = element.Name.LocalName[1] - '0';
        var owner = new StructureElement("H" + composer.HeadingLevel(level).ToString(CultureInfo.InvariantCulture), scope.Parent);
        // Inside a call-out the level depends on its place, and it looks like any call-out's.
        if (element.Parent!.Is("aside"))
        {
            level = 3;
        }

        var style = Styles.Heading(scope.Text, level, composer.Inks.Heading);
        if (galley.Count > 0)
        {
            galley.Space(SpaceAbove(level));
        }

        var first = galley.Count;
        Set(composer, element.Nodes(), scope.Within(owner) with { Text = style }, galley, HeadingLeading);
        if (element.Is("h3"))
        {
            galley.OpenPart(first);
        }

        galley.KeepLastWithNext();
        galley.Space(level == 3 ? 2 : 4);
    }

    /// <summary>The space above a heading that has something before it.</summary>
    public static double SpaceAbove(int level) =>
        level == 1 ? 10
        : level == 2 ? 13
        : 9;

    public static void Paragraph(BlockComposer composer, XElement element, Scope scope, Galley galley)
    {
        var owner = new StructureElement("P", scope.Parent);
        if (element.HasClass("write"))
        {
            WritingLine(composer, element, scope.Within(owner), galley);
        }
        else
        {
            Lines(composer, element.Nodes(), scope.Within(owner), galley);
        }

        if (LeadsIn(element))
        {
            galley.KeepLastWithNext();
        }

        galley.Space(4);
    }

    /// <summary>A line between a heading and its table belongs to both: alone at the end of a page it means nothing.</summary>
    static bool LeadsIn(XElement element) =>
        element.ElementsBeforeSelf().LastOrDefault() is { } before
        && (before.Is("h2") || before.Is("h3"))
        && element.ElementsAfterSelf().FirstOrDefault() is { } after
        && (after.Is("table") || after.Is("figure"));

    /// <summary>Text directly in the scope's own element: in a table cell or a list item.</summary>
    public static void Lines(BlockComposer composer, IEnumerable<XNode> nodes, Scope scope, Galley galley) =>
        Set(composer, nodes, scope, galley, composer.Leading);

    static void Set(BlockComposer composer, IEnumerable<XNode> nodes, Scope scope, Galley galley, double leading)
    {
        var runs = InlineReader.Read(nodes, scope.Text, scope.Parent, composer.Warnings);
        var lines = LineBreaker.Break(runs, scope.Width, scope.Text.Size);
        for (var i = 0; i < lines.Count; i++)
        {
            var height = lines[i].Size * leading;
            // Neither the first nor the last line of a paragraph is alone on a page.
            var lonely = lines.Count > 1 && (i == 0 || i == lines.Count - 2);
            // An empty line still puts its element into the structure: a field left open to fill in.
            galley.Add(
                new Slice(height, [new MarkGroup(scope.Parent, []), .. lines[i].Pieces(scope.X, scope.Width, height, scope.Alignment)])
                {
                    KeepWithNext = lonely ? Keep.Always : Keep.Free,
                }
            );
        }
    }

    /// <summary>A word or two, then a rule to write on.</summary>
    static void WritingLine(BlockComposer composer, XElement element, Scope scope, Galley galley)
    {
        var runs = InlineReader.Read(element.Nodes(), scope.Text, scope.Parent, composer.Warnings);
        var line = LineBreaker.Break(runs, scope.Width, scope.Text.Size)[^1];
        var start = scope.X + (line.Runs.Count == 0 ? 0 : Math.Min(line.Width + 5, scope.Width * 0.8));
        var height = Math.Max(WritingHeight, scope.Text.Size * 2);
        var textHeight = line.Size * Leading;
        galley.Add(
            new Slice(
                height,
                [
                    .. line.Pieces(scope.X, scope.Width, textHeight, Alignment.Left).Select(piece => piece.Shift(0, height - textHeight)),
                    MarkGroup.Furniture(new LineMark(start, height - 2, scope.X + scope.Width, height - 2, 0.5, Colours.Rule)),
                ]
            )
        );
    }
}
