namespace Spoolbook.Papers.ExposureCards;

/// <summary>A mark of the variable shutter.</summary>
public sealed record CardMark(string Mark, string Open, string Stops, string Marked, string Adapted);
