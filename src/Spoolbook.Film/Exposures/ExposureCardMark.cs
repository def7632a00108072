namespace Spoolbook.Film.Exposures;

/// <summary>The exposure at a mark of the variable shutter, at the normal speed.</summary>
/// <param name="Opening">The mark.</param>
/// <param name="Marked">The time at 24 frames a second; null where it is black.</param>
/// <param name="Adapted">The time to meter for; null where it is black.</param>
public sealed record ExposureCardMark(ShutterOpening Opening, ExposureTime? Marked, ExposureTime? Adapted);
