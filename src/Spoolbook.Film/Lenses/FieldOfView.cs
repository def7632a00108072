namespace Spoolbook.Film.Lenses;

/// <summary>What a lens sees through a gauge's camera aperture.</summary>
/// <param name="Horizontal">Degrees across the picture, with the lens at infinity.</param>
/// <param name="Vertical">Degrees up and down.</param>
/// <param name="Diagonal">Degrees from corner to corner.</param>
public readonly record struct FieldOfView(double Horizontal, double Vertical, double Diagonal)
{
    /// <summary>2 atan(w / 2F) for each side of the aperture.</summary>
    /// <param name="focal">The focal length in millimetres, above 0.</param>
    /// <param name="aperture">The camera aperture, not the projected picture.</param>
    /// <exception cref="ArgumentOutOfRangeException">A focal length that is not above zero.</exception>
    public static FieldOfView Of(double focal, CameraAperture aperture)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(focal);
        var (width, height) = ((double)aperture.Width, (double)aperture.Height);
        return new FieldOfView(
            Degrees(width, focal),
            Degrees(height, focal),
            Degrees(Math.Sqrt((width * width) + (height * height)), focal)
        );
    }

    /// <summary>The width and height in millimetres that fill the picture at a focus: side × s / i.</summary>
    /// <param name="focal">The focal length in millimetres, above 0.</param>
    /// <param name="aperture">The camera aperture.</param>
    /// <param name="focus">Millimetres from the film plane, at least four focal lengths.</param>
    /// <exception cref="ArgumentOutOfRangeException">A focus nearer than the lens can.</exception>
    public static (double Width, double Height) At(double focal, CameraAperture aperture, double focus)
    {
        var image = ThinLens.ImageDistance(focal, focus);
        var scale = (focus - image) / image;
        return ((double)aperture.Width * scale, (double)aperture.Height * scale);
    }

    static double Degrees(double side, double focal) => 2 * Math.Atan(side / (2 * focal)) * 180 / Math.PI;
}
