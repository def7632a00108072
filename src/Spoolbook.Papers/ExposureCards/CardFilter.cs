namespace Spoolbook.Papers.ExposureCards;

/// <summary>The light that a filter takes.</summary>
public sealed record CardFilter(string Filter, string What, string Stops);
