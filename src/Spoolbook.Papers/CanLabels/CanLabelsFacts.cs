using System.Collections.Immutable;
using Spoolbook.Papers.Facts;

namespace Spoolbook.Papers.CanLabels;

/// <summary>The facts of the sheet of can labels.</summary>
public sealed record CanLabelsFacts(PaperHead Head) : PaperFacts(Head)
{
    public required LabelGrid Sheet { get; init; }

    public required string Gauge { get; init; }

    public required ImmutableArray<CanLabel> Labels { get; init; }
}
