namespace Spoolbook.Film;

/// <summary>The picture that a camera's gate exposes; larger than what a projector shows.</summary>
/// <param name="Width">Across the film, in millimetres.</param>
/// <param name="Height">Along the film, in millimetres.</param>
public sealed record CameraAperture(decimal Width, decimal Height)
{
    /// <summary>Width over height: 1.37 in 16 mm, 1.69 in Super 16.</summary>
    public double Aspect => (double)(Width / Height);
}
