namespace Spoolbook.Film.Lenses;

/// <summary>A lens without thickness: subject, lens and film plane on one line.</summary>
public static class ThinLens
{
    /// <summary>
    /// The closest focus of a lens, in millimetres from the film plane: four focal lengths, where the picture is life
    /// size.
    /// </summary>
    /// <param name="focal">The focal length in millimetres.</param>
    public static double NearestFocus(double focal) => 4 * focal;

    /// <summary>
    /// From the lens to the film for a subject at a distance from the film plane: the smaller solution of i (D − i) = F
    /// D, which nears F for a far subject (1/s + 1/i = 1/F).
    /// </summary>
    /// <param name="focal">The focal length in millimetres, above 0.</param>
    /// <param name="focus">Millimetres from the film plane to the subject, at least four focal lengths.</param>
    /// <returns>Millimetres.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A subject nearer than a lens of that focal length can focus.</exception>
    public static double ImageDistance(double focal, double focus)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(focal);
        ArgumentOutOfRangeException.ThrowIfLessThan(focus, NearestFocus(focal));

        // A quotient, not a difference of large numbers: far subjects keep their digits.
        return 2 * focal / (1 + Math.Sqrt(1 - (4 * focal / focus)));
    }

    /// <summary>The draw of a bellows or a close focus: image distance less focal length, in millimetres.</summary>
    /// <inheritdoc cref="ImageDistance" path="/param"/>
    /// <inheritdoc cref="ImageDistance" path="/exception"/>
    public static double Extension(double focal, double focus) => ImageDistance(focal, focus) - focal;
}
