using System.Xml.Linq;
using Spoolbook.Papers.Pages;
using Spoolbook.Papers.Typesetting.Drawing;
using Spoolbook.Papers.Typesetting.Setting;
using Spoolbook.Papers.Typesetting.Setup;
using Spoolbook.Pdf.Structure;

namespace Spoolbook.Papers.Typesetting.Layout;

/// <summary>Sets the blocks of a page into a galley, each kind by its own composer.</summary>
sealed class BlockComposer(PageSetup setup, WarningBook warnings, StructureElement root)
{
    const double BlockSpace = 6;

    // Fewer than this stay with what is around them.
    const int FewPictures = 3;

    int _lastHeading;

    public PageSetup Setup { get; } = setup;

    public WarningBook Warnings { get; } = warnings;

    public StructureElement Root { get; } = root;

    /// <summary>The share of the usual space between blocks.</summary>
    public double Spacing { get; set; } = 1;

    /// <summary>From line to line of a text, in its type size.</summary>
    public double Leading { get; set; } = Paragraphs.Leading;

    /// <summary>How large fitted tables are, from compact, 0, to roomy, 1.</summary>
    public double Fitted { get; init; }

    /// <summary>Whether a fitted table had no room for its columns.</summary>
    public bool IsCrowded { get; set; }

    /// <summary>Where a colour is printed instead of black; on a can's label, nowhere.</summary>
    public PageInks Inks { get; set; } = setup.Inks;

    /// <summary>
    /// The level of a heading for screen readers: at most one below the heading before it, so that no level is skipped.
    /// Its look is still the template's choice.
    /// </summary>
    public int HeadingLevel(int level)
    {
        _lastHeading = Math.Min(level, _lastHeading + 1);
        return _lastHeading;
    }

    /// <summary>Sets the contents of an element: its blocks, or its text as one block of lines.</summary>
    public void Content(XElement element, Scope scope, Galley galley)
    {
        if (element.Elements().Any(child => Vocabulary.Blocks.Contains(child.Name.LocalName)))
        {
            // Where each of the pictures begins that follow one another.
            var pictures = new List<int>();
            foreach (var child in element.Elements().Where(e => !e.HasClass("only-screen")))
            {
                if (!child.Is("figure"))
                {
                    KeepCompany(pictures, galley);
                    pictures.Clear();
                }
                else
                {
                    pictures.Add(galley.Count);
                }

                Block(child, scope, galley);
            }

            KeepCompany(pictures, galley);
        }
        else
        {
            Paragraphs.Lines(this, element.Nodes(), scope, galley);
        }
    }

    // Of a row of pictures neither the first, which may be the legend, nor the last is alone on a page.
    static void KeepCompany(List<int> pictures, Galley galley)
    {
        if (pictures.Count < FewPictures)
        {
            return;
        }

        galley.KeepTogether(pictures[0], pictures[2]);
        galley.KeepTogether(pictures[^2]);
    }

    public void Block(XElement element, Scope scope, Galley galley)
    {
        if (element.HasClass("only-screen"))
        {
            return;
        }

        scope = scope with { Text = Styles.Common(element, scope.Text), Alignment = Styles.Align(element) ?? scope.Alignment };
        var start = galley.Count;
        switch (element.Name.LocalName)
        {
            case "h1" or "h2" or "h3":
                Paragraphs.Heading(this, element, scope, galley);
                break;
            case "p":
                Paragraphs.Paragraph(this, element, scope, galley);
                break;
            case "ul" or "ol":
                Lists.Compose(this, element, scope, galley);
                break;
            case "dl":
                FieldGrid.Compose(this, element, scope, galley);
                break;
            case "table":
                new TableComposer(this, element, scope).Compose(galley);
                break;
            case "figure":
                Figures.Compose(this, element, scope, galley);
                break;
            case "aside":
                Callouts.Compose(this, element, scope, galley);
                break;
            case "header":
                Columns.Header(this, element, scope, galley);
                galley.Title(start);
                break;
            case "section" when element.HasClass("sheet"):
                LabelComposer.Compose(this, element, galley);
                break;
            case "section":
                Section(element, scope, galley);
                break;
            case "div":
                Division(element, scope, galley);
                break;
            case "hr":
                galley.Space(BlockSpace);
                galley.Add(new Slice(1, [MarkGroup.Furniture(new LineMark(scope.X, 0.5, scope.X + scope.Width, 0.5, 0.5, Colours.Rule))]));
                break;
        }
        if (element.HasClass("keep"))
        {
            galley.KeepTogether(start);
        }

        if (element.HasClass("front"))
        {
            galley.Change(start, slice => slice with { IsFront = true });
        }

        if ((string?)element.Attribute("id") is { } name)
        {
            galley.Name(start, name);
        }

        galley.Space(BlockSpace);
    }

    void Section(XElement element, Scope scope, Galley galley)
    {
        if (element.HasClass("page"))
        {
            galley.NewPage();
        }

        Content(element, scope.Within(new StructureElement("Sect", scope.Parent)), galley);
    }

    void Division(XElement element, Scope scope, Galley galley)
    {
        if (element.HasClass("break"))
        {
            galley.NewPage();
        }
        else if (element.HasClass("row"))
        {
            Columns.Row(this, element, scope, galley);
        }
        else
        {
            Content(element, scope.Within(new StructureElement("Div", scope.Parent)), galley);
        }
    }
}
