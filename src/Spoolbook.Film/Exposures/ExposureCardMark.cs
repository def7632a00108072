namespace Spoolbook.Film.Exposures;

/// <summary>The exposure at a mark of the variable shutter, at the speed that the card counts from.</summary>
/// <param name="Opening">The mark.</param>
/// <param name="Marked">The time; null where it is black.</param>
/// <param name="Adapted">The time to meter for; null where it is black.</param>
public sealed record ExposureCardMark(ShutterOpening Opening, ExposureTime? Marked, ExposureTime? Adapted);
