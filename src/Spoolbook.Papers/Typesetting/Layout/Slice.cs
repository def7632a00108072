using System.Collections.Immutable;
using Spoolbook.Papers.Typesetting.Drawing;

namespace Spoolbook.Papers.Typesetting.Layout;

/// <summary>
/// A horizontal strip of the page that stays whole: a line of text, a row of a table, a figure. Pieces are placed from
/// the left margin and from the slice's own top.
/// </summary>
sealed record Slice(double Height, ImmutableArray<MarkGroup> Pieces)
{
    /// <summary>Left out where the slice is first on a page.</summary>
    public double SpaceBefore { get; init; }

    public Keep KeepWithNext { get; init; }

    /// <summary>Drawn again above this slice where it is first on a page.</summary>
    public RepeatedHead? Head { get; init; }

    /// <summary>Drawn round this slice and its neighbours, outermost first.</summary>
    public ImmutableArray<Frame> Frames { get; init; } = [];

    /// <summary>The names by which links find it.</summary>
    public ImmutableArray<string> Names { get; init; } = [];

    public bool NewPage { get; init; }

    /// <summary>A paper's own heading: a page that begins with it needs no running head.</summary>
    public bool IsTitle { get; init; }

    /// <summary>Whether a part of a section begins with it: the first line of a subheading.</summary>
    public bool OpensPart { get; init; }

    /// <summary>Whether it should be on the first page, even if that is set tighter for it.</summary>
    public bool IsFront { get; init; }

    /// <summary>A sheet of labels: it has a page to itself, from edge to edge.</summary>
    public bool WholePage { get; init; }

    /// <summary>Splits the slice at a height where no page can hold it.</summary>
    public Func<double, (Slice First, Slice Next)?>? Split { get; init; }
}
