using System.Collections.Immutable;
using Spoolbook.Papers.Typesetting.Drawing;

namespace Spoolbook.Papers.Typesetting.Layout;

/// <summary>
/// A horizontal strip of the page that is not torn: a line of text, a row of a table, a figure. Pieces stand at their
/// place from the left margin, and from the slice's own top.
/// </summary>
sealed record Slice(double Height, ImmutableArray<MarkGroup> Pieces)
{
    /// <summary>Left out where the slice comes first on a page.</summary>
    public double SpaceBefore { get; init; }

    public Keep KeepWithNext { get; init; }

    /// <summary>What is drawn again above this slice where it comes first on a page.</summary>
    public RepeatedHead? Head { get; init; }

    /// <summary>What is drawn round this slice and its neighbours, outermost first.</summary>
    public ImmutableArray<Frame> Frames { get; init; } = [];

    public bool NewPage { get; init; }

    /// <summary>A sheet of labels: it has its page to itself, from edge to edge.</summary>
    public bool WholePage { get; init; }

    /// <summary>Tears the slice at a height where no page can hold it.</summary>
    public Func<double, (Slice First, Slice Next)?>? Split { get; init; }
}
