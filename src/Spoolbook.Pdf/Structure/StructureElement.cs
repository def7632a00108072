namespace Spoolbook.Pdf.Structure;

/// <summary>
/// One element of a document's logical structure: a heading, a table cell, a figure. An element joins its parent's
/// children when it is first drawn or attached, which keeps the tree in reading order.
/// </summary>
public sealed class StructureElement(string tag, StructureElement? parent)
{
    readonly List<StructureChild> _children = [];
    bool _attached;

    /// <summary>A standard structure type of PDF 1.4: "H1", "P", "TD"…</summary>
    public string Tag { get; } = tag;

    public StructureElement? Parent { get; } = parent;

    /// <summary>What a picture shows, in words.</summary>
    public string? Alternative { get; init; }

    /// <summary>For a head cell: whether it heads its column or its row.</summary>
    public HeadScope? Scope { get; init; }

    public int ColumnSpan { get; init; } = 1;

    public int RowSpan { get; init; } = 1;

    /// <summary>For a list: whether its labels are numbers.</summary>
    public bool Numbered { get; init; }

    /// <summary>A figure's place on its page, in points from the page's bottom left corner.</summary>
    internal (double Left, double Bottom, double Right, double Top)? Bounds { get; set; }

    internal IReadOnlyList<StructureChild> Children => _children;

    internal int ObjectNumber { get; set; }

    /// <summary>Puts the element and its ancestors into the tree, even with nothing drawn: an empty cell.</summary>
    public void Attach()
    {
        if (_attached)
        {
            return;
        }

        _attached = true;
        if (Parent is null)
        {
            return;
        }

        Parent.Attach();
        Parent._children.Add(new StructureChild(this, 0, 0, ChildKind.Element));
    }

    internal void AddContent(int page, int contentNumber)
    {
        Attach();
        _children.Add(new StructureChild(null, page, contentNumber, ChildKind.Content));
    }

    internal void AddAnnotation(int page, int annotationObject)
    {
        Attach();
        _children.Add(new StructureChild(null, page, annotationObject, ChildKind.Annotation));
    }
}
