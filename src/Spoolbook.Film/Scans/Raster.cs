using System.Globalization;

namespace Spoolbook.Film.Scans;

/// <summary>The size of a scanned frame, in pixels.</summary>
/// <param name="Width">Pixels across the film; above zero.</param>
/// <param name="Height">Pixels along the film; above zero.</param>
public readonly record struct Raster(int Width, int Height)
{
    /// <summary>Pixels in a frame.</summary>
    public long Pixels => (long)Width * Height;

    /// <summary>As a lab writes it: <c>2048 × 1536</c>.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Width} × {Height}");
}
