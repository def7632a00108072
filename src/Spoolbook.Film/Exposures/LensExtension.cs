namespace Spoolbook.Film.Exposures;

/// <summary>A lens racked out beyond infinity.</summary>
/// <param name="Focal">The focal length in millimetres, above 0.</param>
/// <param name="Beyond">Millimetres beyond infinity, 0 or more.</param>
public readonly record struct LensExtension(double Focal, double Beyond)
{
    /// <summary>The factor ((F + e) / F)²: life size, where e is F, needs four times the light (standard, from memory).</summary>
    public double Factor => Math.Pow((Focal + Beyond) / Focal, 2);
}
