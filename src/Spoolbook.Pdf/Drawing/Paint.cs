using System.Collections.Immutable;

namespace Spoolbook.Pdf.Drawing;

/// <summary>How a path is painted. Colours are 0xRRGGBB; null leaves fill or outline out; dashes are in points.</summary>
public sealed record Paint(int? Fill, int? Outline, double Width = 0)
{
    public ImmutableArray<double> Dashes { get; init; } = [];

    public bool EvenOdd { get; init; }
}
