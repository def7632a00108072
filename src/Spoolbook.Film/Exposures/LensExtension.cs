namespace Spoolbook.Film.Exposures;

/// <summary>A lens that stands farther from the film than at infinity.</summary>
/// <param name="Focal">The focal length in millimetres, above 0.</param>
/// <param name="Beyond">Millimetres beyond its place at infinity, 0 or more.</param>
public readonly record struct LensExtension(double Focal, double Beyond)
{
    /// <summary>The factor ((F + e) / F)²: at life size, where e is F, four times the light is needed (standard, from memory).</summary>
    public double Factor => Math.Pow((Focal + Beyond) / Focal, 2);
}
