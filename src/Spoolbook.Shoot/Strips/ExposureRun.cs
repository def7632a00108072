using Spoolbook.Shoot.Walks;

namespace Spoolbook.Shoot.Strips;

/// <summary>Frames next to each other with the same exposure.</summary>
/// <param name="Span">The frames.</param>
/// <param name="Stops">Stops from normal of all their layers together; negative infinity where they are black.</param>
public readonly record struct ExposureRun(Span Span, double Stops);
