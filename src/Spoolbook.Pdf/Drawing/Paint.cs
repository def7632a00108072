using System.Collections.Immutable;

namespace Spoolbook.Pdf.Drawing;

/// <summary>How to paint a path. Colours are 0xRRGGBB; null leaves out fill or outline; dashes are in points.</summary>
public sealed record Paint(int? Fill, int? Outline, double Width = 0)
{
    public ImmutableArray<double> Dashes { get; init; } = [];

    public bool EvenOdd { get; init; }
}
