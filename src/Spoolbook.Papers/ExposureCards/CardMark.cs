namespace Spoolbook.Papers.ExposureCards;

/// <summary>What a mark of the variable shutter does.</summary>
public sealed record CardMark(string Mark, string Open, string Stops, string Marked, string Adapted);
