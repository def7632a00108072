using System.Collections.Immutable;
using Spoolbook.Pdf.Structure;

namespace Spoolbook.Papers.Typesetting.Layout;

/// <summary>One cell of a row: its slices have their own x. The element is in the structure even if the cell is empty.</summary>
sealed record RowCell(StructureElement? Element, ImmutableArray<Slice> Content)
{
    public double PaddingTop { get; init; }

    public double PaddingBottom { get; init; }

    /// <summary>A cell that spans the rows below does not make its own row taller.</summary>
    public bool Reaches { get; init; }

    public double Height => Galley.Height(Content) + PaddingTop + PaddingBottom;
}
