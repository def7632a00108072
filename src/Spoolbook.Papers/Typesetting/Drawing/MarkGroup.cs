using System.Collections.Immutable;
using Spoolbook.Pdf.Structure;

namespace Spoolbook.Papers.Typesetting.Drawing;

/// <summary>
/// Marks that belong together in the document's structure. Without an element they are furniture: rules, backgrounds,
/// repeated heads. A figure's piece has the figure's place.
/// </summary>
sealed record MarkGroup(StructureElement? Element, ImmutableArray<PageMark> Marks)
{
    public (double X, double Y, double Width, double Height)? Place { get; init; }

    public static MarkGroup Furniture(params ReadOnlySpan<PageMark> marks) => new(null, [.. marks]);

    public MarkGroup Shift(double dx, double dy) =>
        this with
        {
            Marks = [.. Marks.Select(mark => mark.Shift(dx, dy))],
            Place = Place is { } p ? (p.X + dx, p.Y + dy, p.Width, p.Height) : null,
        };

    /// <summary>The same marks outside the structure: a table's head on its second page is not read again.</summary>
    public MarkGroup AsFurniture() => new(null, [.. Marks.Where(mark => mark is not LinkMark)]);
}
