namespace Spoolbook.Film.Lenses;

/// <summary>How far the picture is sharp before and behind the focus, measured from the film plane.</summary>
/// <param name="Near">The nearest sharp distance in millimetres from the film plane.</param>
/// <param name="Far">The farthest, in millimetres from the film plane; infinite from the hyperfocal distance on.</param>
/// <param name="Hyperfocal">F² / (N c) in millimetres from the lens.</param>
public readonly record struct DepthOfField(double Near, double Far, double Hyperfocal)
{
    /// <summary>From the nearest to the farthest, in millimetres.</summary>
    public double Total => Far - Near;

    /// <summary>
    /// The hyperfocal distance: set to it, the lens is sharp from half of it to infinity (B. Brown, Cinematography, 2nd
    /// ed., p. 277). Uses the engraved number, as tables do, and leaves out the focal length that some formulas add.
    /// </summary>
    /// <param name="focal">The focal length in millimetres.</param>
    /// <param name="number">The f-number as engraved.</param>
    /// <param name="circle">The circle of confusion in millimetres.</param>
    /// <returns>Millimetres from the lens.</returns>
    /// <exception cref="ArgumentOutOfRangeException">One of them is not above zero.</exception>
    public static double HyperfocalOf(double focal, double number, double circle)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(focal);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(number);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(circle);
        return focal * focal / (number * circle);
    }

    /// <summary>
    /// The circle of confusion by angle, where a point may blur to the same angle with every lens: F tan θ. The
    /// hyperfocal distance is then the width of the aperture over tan θ (Eastman Kodak AA-26, as quoted: F/N over the
    /// tangent of 1/30 of a degree).
    /// </summary>
    /// <param name="focal">The focal length in millimetres.</param>
    /// <param name="degrees">The angle, above 0 and below 90.</param>
    /// <returns>Millimetres.</returns>
    /// <exception cref="ArgumentOutOfRangeException">One of them is outside its range.</exception>
    public static double CircleOfAngle(double focal, double degrees)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(focal);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(degrees);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(degrees, 90);
        return focal * Math.Tan(degrees * Math.PI / 180);
    }

    /// <summary>
    /// The limits of a thin lens: near = s H / (H + s − F) and far = s H / (H − s + F), s from the lens. Focus and
    /// limits are measured from the film plane (from memory; the simple forms without F are in every textbook).
    /// </summary>
    /// <param name="focal">The focal length in millimetres.</param>
    /// <param name="number">The f-number as engraved.</param>
    /// <param name="circle">The circle of confusion in millimetres.</param>
    /// <param name="focus">Millimetres from the film plane, at least four focal lengths; or infinity.</param>
    /// <exception cref="ArgumentOutOfRangeException">
    /// One of them is not above zero, or the focus is nearer than a lens of that focal length can focus.
    /// </exception>
    public static DepthOfField Of(double focal, double number, double circle, double focus)
    {
        var hyperfocal = HyperfocalOf(focal, number, circle);
        if (double.IsPositiveInfinity(focus))
        {
            return new DepthOfField(hyperfocal + focal, double.PositiveInfinity, hyperfocal);
        }

        var image = ThinLens.ImageDistance(focal, focus);
        var subject = focus - image;
        var near = subject * hyperfocal / (hyperfocal + subject - focal);
        var far = subject - focal < hyperfocal ? image + (subject * hyperfocal / (hyperfocal - subject + focal)) : double.PositiveInfinity;
        return new DepthOfField(near + image, far, hyperfocal);
    }
}
