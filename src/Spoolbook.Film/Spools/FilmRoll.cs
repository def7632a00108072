namespace Spoolbook.Film.Spools;

/// <summary>
/// A roll as a ring of film: its length from its diameter. The flat side of the ring is the film's edge: length ×
/// thickness = π/4 (D² − d²). A table of reel capacities (2729 ft in 15 in on a 2 in core, 2470 on 5 in; 2223 in 14 in
/// on 4 in) gives one thickness, 0.0053 in, by this formula.
/// </summary>
public sealed record FilmRoll
{
    /// <summary>Film on a core.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A core or a thickness that is not above zero.</exception>
    public FilmRoll(double core, double thickness)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(core);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(thickness);
        Core = core;
        Thickness = thickness;
    }

    /// <summary>The diameter of the core or of the spool's barrel in millimetres.</summary>
    public double Core { get; }

    /// <summary>
    /// Base and emulsion together in millimetres. Sources run from 0.0053 in (polyester) to 0.006 in (acetate), so it
    /// is an input.
    /// </summary>
    public double Thickness { get; }

    /// <summary>Millimetres of film on a roll of that diameter: π (D² − d²) / (4 t). Zero at the core.</summary>
    /// <param name="diameter">Over the film, in millimetres; not less than the core.</param>
    /// <exception cref="ArgumentOutOfRangeException">A diameter below the core's.</exception>
    public double LengthAt(double diameter)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(diameter, Core);
        return Math.PI * ((diameter * diameter) - (Core * Core)) / (4 * Thickness);
    }

    /// <summary>The least and the most film on the roll if the diameter is misread by so many millimetres either way.</summary>
    /// <returns>The least is zero where the error reaches the core.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A negative error, or a diameter below the core's.</exception>
    public (double Least, double Most) LengthBetween(double diameter, double error)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(error);
        ArgumentOutOfRangeException.ThrowIfLessThan(diameter, Core);
        return (LengthAt(Math.Max(diameter - error, Core)), LengthAt(diameter + error));
    }
}
