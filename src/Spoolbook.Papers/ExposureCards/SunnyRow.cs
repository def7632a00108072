using System.Collections.Immutable;

namespace Spoolbook.Papers.ExposureCards;

/// <summary>The stop for a kind of daylight, one for each stock.</summary>
public sealed record SunnyRow(string Light, ImmutableArray<string> Stops);
