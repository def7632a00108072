using System.Collections.Immutable;
using Spoolbook.Papers.Facts;

namespace Spoolbook.Papers.ExposureCards;

/// <summary>The facts of one body's exposure card.</summary>
public sealed record ExposureCardFacts(PaperHead Head) : PaperFacts(Head)
{
    /// <summary>Whether it is the pocket card, which leaves out what its owner knows by heart.</summary>
    public bool Pocket { get; init; }

    public required string Body { get; init; }
    public required string What { get; init; }
    public required string Shutter { get; init; }
    public required string FinderLoss { get; init; }
    public required string MeterFor { get; init; }
    public required bool Adapted { get; init; }
    public required string FullWind { get; init; }
    public required string RunUnit { get; init; }
    public required ImmutableArray<CardSpeed> Speeds { get; init; }
    public required ImmutableArray<CardMark> Marks { get; init; }
    public required string MarksCaption { get; init; }
    public required ImmutableArray<CardFilter> Filters { get; init; }

    /// <summary>Whether the kit says what any filter is; the pocket card has no room for it.</summary>
    public bool FiltersDescribed => !Pocket && Filters.Any(f => f.What.Length > 0);
    public required ImmutableArray<string> SunnyHeads { get; init; }
    public required ImmutableArray<SunnyRow> Sunny { get; init; }
    public required string SunnyCaption { get; init; }
}
