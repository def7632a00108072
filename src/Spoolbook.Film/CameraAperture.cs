namespace Spoolbook.Film;

/// <summary>The picture that a camera's gate exposes; larger than what a projector shows.</summary>
/// <param name="Width">Across the film, in millimetres.</param>
/// <param name="Height">Along the film, in millimetres.</param>
public sealed record CameraAperture(decimal Width, decimal Height)
{
}
