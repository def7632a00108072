namespace Spoolbook.Film.Scans;

/// <summary>How much of a drive a scanned frame fills, in three colours at full size (4:4:4) and not compressed.</summary>
public static class ScannedFrame
{
    /// <summary>Bytes in a megabyte of a drive, as drives are sold.</summary>
    public static Ratio Megabyte => 1_000_000;

    /// <summary>Bytes in a gigabyte of a drive, as drives are sold.</summary>
    public static Ratio Gigabyte => 1_000_000_000;

    /// <summary>
    /// Bytes of one frame. 10 bits go three to a word of 32, so that 2048 × 1536 is 12 582 912: 12 MB in the
    /// Digital Fact Book, and 50 GB for the 4000 frames of 100 ft. 12 bits are stored in 16 (from memory).
    /// </summary>
    /// <param name="bits">Bits a colour: 8, 10, 12 or 16.</param>
    /// <exception cref="ArgumentOutOfRangeException">Another count of bits.</exception>
    public static long Bytes(Raster raster, int bits) =>
        raster.Pixels
        * bits switch
        {
            8 => 3,
            10 => 4,
            12 or 16 => 6,
            _ => throw new ArgumentOutOfRangeException(nameof(bits), "A scan has 8, 10, 12 or 16 bits a colour."),
        };
}
