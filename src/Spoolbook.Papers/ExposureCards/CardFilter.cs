namespace Spoolbook.Papers.ExposureCards;

/// <summary>What a filter costs.</summary>
public sealed record CardFilter(string Filter, string What, string Stops);
