using Spoolbook.Papers.Typesetting.Fonts;
using Spoolbook.Pdf.Documents;
using Spoolbook.Pdf.Drawing;

namespace Spoolbook.Papers.Typesetting.Drawing;

/// <summary>Draws pieces on a page of the PDF. Nothing else turns marks into PDF.</summary>
sealed class Painter(PdfPage page)
{
    public void Draw(MarkGroup piece, double dx, double dy)
    {
        if (piece.Element is { } element)
        {
            element.Attach();
            if (piece.Marks.IsEmpty)
            {
                return;
            }

            (double, double, double, double)? place = piece.Place is { } p ? (p.X + dx, p.Y + dy, p.Width, p.Height) : null;
            page.Begin(element, place);
        }
        else
        {
            if (piece.Marks.IsEmpty)
            {
                return;
            }

            page.BeginFurniture();
        }
        foreach (var mark in piece.Marks)
        {
            Draw(mark.Shift(dx, dy));
        }

        page.End();
    }

    void Draw(PageMark mark)
    {
        switch (mark)
        {
            case TextMark text:
                page.Text(text.X, text.Baseline, text.Text, BuiltInFonts.Get(text.Face), text.Size, text.Colour, text.Tabular);
                break;
            case BoxMark box:
                page.Rectangle(box.X, box.Y, box.Width, box.Height, box.Paint);
                break;
            case LineMark line:
                page.Path(
                    [PathStep.Move(line.X1, line.Y1), PathStep.Line(line.X2, line.Y2)],
                    new Paint(null, line.Colour, line.Width) { Dashes = line.Dashes }
                );
                break;
            case PathMark path:
                page.Path(path.Steps, path.Paint);
                break;
            case ImageMark image:
                page.Image(image.X, image.Y, image.Width, image.Height, image.Picture);
                break;
            case LinkMark link:
                page.Link(link.X, link.Y, link.Width, link.Height, link.Address, link.Element);
                break;
            case ClipMark clip:
                page.BeginClip(clip.X, clip.Y, clip.Width, clip.Height);
                foreach (var inner in clip.Inside)
                {
                    Draw(inner);
                }

                page.EndClip();
                break;
        }
    }
}
