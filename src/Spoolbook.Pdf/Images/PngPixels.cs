using System.Buffers.Binary;

namespace Spoolbook.Pdf.Images;

/// <summary>Turns a PNG's unpacked rows into bytes of grey or of red, green and blue, on white.</summary>
sealed class PngPixels(PngHeader header, byte[]? palette, byte[]? transparency, Stream rows)
{
    const int White = 255;

    readonly byte[] _pixels = new byte[header.Width * header.Height * (header.IsGrey ? 1 : 3)];
    readonly int _most = (1 << header.Depth) - 1;

    public byte[] Read()
    {
        if (header.IsPalette && palette is null)
        {
            throw new FormatException("it has no palette");
        }

        foreach (var pass in header.Passes)
        {
            var length = header.RowBytes(pass.Width);
            var above = new byte[length];
            var packed = new byte[1 + length];
            for (var y = 0; y < pass.Height; y++)
            {
                rows.ReadExactly(packed);
                var row = packed.AsSpan(1);
                Unfilter(packed[0], row, above, header.PixelBytes);
                for (var x = 0; x < pass.Width; x++)
                {
                    Set(pass.X + x * pass.StepX, pass.Y + y * pass.StepY, row, x);
                }

                row.CopyTo(above);
            }
        }
        return _pixels;
    }

    static void Unfilter(byte filter, Span<byte> row, ReadOnlySpan<byte> above, int pixelBytes)
    {
        if (filter > 4)
        {
            throw new FormatException("its pixels are damaged");
        }

        for (var i = 0; i < row.Length; i++)
        {
            int left = i >= pixelBytes ? row[i - pixelBytes] : 0,
                up = above[i],
                corner = i >= pixelBytes ? above[i - pixelBytes] : 0;
            row[i] = (byte)(
                row[i]
                    + filter switch
                    {
                        1 => left,
                        2 => up,
                        3 => (left + up) / 2,
                        4 => Nearest(left, up, corner),
                        _ => 0,
                    }
                & 255
            );
        }
    }

    /// <summary>Of the three neighbours, the nearest to left + up − corner: the Paeth filter.</summary>
    static int Nearest(int left, int up, int corner)
    {
        var guess = left + up - corner;
        int toLeft = Math.Abs(guess - left),
            toUp = Math.Abs(guess - up),
            toCorner = Math.Abs(guess - corner);
        return toLeft <= toUp && toLeft <= toCorner ? left
            : toUp <= toCorner ? up
            : corner;
    }

    void Set(int x, int y, ReadOnlySpan<byte> row, int pixel)
    {
        int first = pixel * header.Channels,
            to = y * header.Width + x;
        if (header.IsPalette)
        {
            var index = Sample(row, first);
            if (3 * index + 2 >= palette!.Length)
            {
                throw new FormatException("a pixel's colour is not in its palette");
            }

            var opacity = transparency is not null && index < transparency.Length ? transparency[index] : White;
            for (var c = 0; c < 3; c++)
            {
                _pixels[3 * to + c] = OnWhite(palette[3 * index + c], opacity);
            }

            return;
        }

        var colours = header.IsGrey ? 1 : 3;
        var alpha =
            header.HasAlpha ? Eight(Sample(row, first + colours))
            : IsKeyed(row, first, colours) ? 0
            : White;
        for (var c = 0; c < colours; c++)
        {
            _pixels[colours * to + c] = OnWhite(Eight(Sample(row, first + c)), alpha);
        }
    }

    /// <summary>Whether the pixel has the one colour that the file marks as transparent.</summary>
    bool IsKeyed(ReadOnlySpan<byte> row, int first, int colours)
    {
        if (transparency is null || transparency.Length < 2 * colours)
        {
            return false;
        }

        for (var c = 0; c < colours; c++)
        {
            if (Sample(row, first + c) != BinaryPrimitives.ReadUInt16BigEndian(transparency.AsSpan(2 * c)))
            {
                return false;
            }
        }
        return true;
    }

    int Sample(ReadOnlySpan<byte> row, int index) =>
        header.Depth switch
        {
            8 => row[index],
            16 => BinaryPrimitives.ReadUInt16BigEndian(row[(2 * index)..]),
            _ => row[index * header.Depth / 8] >> 8 - header.Depth - index * header.Depth % 8 & _most,
        };

    int Eight(int sample) => (sample * White + _most / 2) / _most;

    static byte OnWhite(int value, int alpha) => (byte)((value * alpha + White * (White - alpha) + White / 2) / White);
}
