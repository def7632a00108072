using System.Buffers.Binary;

namespace Spoolbook.Pdf.Images;

/// <summary>A PNG's header: its size, and how it stores a pixel.</summary>
sealed record PngHeader(int Width, int Height, int Depth, int Kind, bool IsInterlaced)
{
    const int Grey = 0,
        Colour = 2,
        Palette = 3,
        GreyAlpha = 4,
        ColourAlpha = 6;

    // Where the seven passes of an interlaced picture start, and how far apart their pixels are.
    static readonly (int X, int Y, int StepX, int StepY)[] Adam =
    [
        (0, 0, 8, 8),
        (4, 0, 8, 8),
        (0, 4, 4, 8),
        (2, 0, 4, 4),
        (0, 2, 2, 4),
        (1, 0, 2, 2),
        (0, 1, 1, 2),
    ];

    public bool IsGrey => Kind is Grey or GreyAlpha;

    public bool IsPalette => Kind == Palette;

    public bool HasAlpha => Kind is GreyAlpha or ColourAlpha;

    public int Channels =>
        Kind switch
        {
            Colour => 3,
            GreyAlpha => 2,
            ColourAlpha => 4,
            _ => 1,
        };

    /// <summary>Bytes from a byte to its counterpart in the pixel before, which filters compare it with.</summary>
    public int PixelBytes => Math.Max(1, Channels * Depth / 8);

    public IEnumerable<PngPass> Passes
    {
        get
        {
            if (!IsInterlaced)
            {
                return [new PngPass(0, 0, 1, 1, Width, Height)];
            }

            return Adam.Select(p => new PngPass(
                    p.X,
                    p.Y,
                    p.StepX,
                    p.StepY,
                    (Width - p.X + p.StepX - 1) / p.StepX,
                    (Height - p.Y + p.StepY - 1) / p.StepY
                ))
                .Where(p => p is { Width: > 0, Height: > 0 });
        }
    }

    public int RowBytes(int width) => (width * Channels * Depth + 7) / 8;

    public static PngHeader Read(byte[] data)
    {
        const int Length = 13;
        if (data.Length != Length)
        {
            throw new FormatException("its header is damaged");
        }

        uint width = BinaryPrimitives.ReadUInt32BigEndian(data),
            height = BinaryPrimitives.ReadUInt32BigEndian(data.AsSpan(4));
        int depth = data[8],
            kind = data[9];
        var known = kind switch
        {
            Grey => depth is 1 or 2 or 4 or 8 or 16,
            Palette => depth is 1 or 2 or 4 or 8,
            Colour or GreyAlpha or ColourAlpha => depth is 8 or 16,
            _ => false,
        };
        if (!known || width is 0 or > int.MaxValue || height is 0 or > int.MaxValue || data[10] != 0 || data[11] != 0 || data[12] > 1)
        {
            throw new FormatException("its header is damaged");
        }

        return new PngHeader((int)width, (int)height, depth, kind, data[12] == 1);
    }
}
