using Spoolbook.Film;

namespace Spoolbook.Shoot.Records;

/// <summary>A mark of a variable shutter.</summary>
/// <param name="Open">The part of the full opening that is left: 1 is open, 0 closed.</param>
/// <param name="Stops">The stops that the trade counts for it; null for closed.</param>
public sealed record ShutterMark(Place Place, Located<string> Name, Located<Ratio> Open, Located<double>? Stops);
