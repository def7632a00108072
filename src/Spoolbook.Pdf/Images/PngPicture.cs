using System.Globalization;
using System.IO.Compression;

namespace Spoolbook.Pdf.Images;

/// <summary>
/// A PNG converted for an archival page: eight bits per channel, grey or colour, transparency laid on white. Reads every
/// kind of pixel in the standard (ISO/IEC 15948) and ignores colour corrections.
/// </summary>
public sealed class PngPicture
{
    /// <summary>The most pixels of one picture; a logo needs some 600 per side.</summary>
    public const int MostInAll = 2_000_000;

    PngPicture(int width, int height, bool isGrey, byte[] pixels) => (Width, Height, IsGrey, Pixels) = (width, height, isGrey, pixels);

    public int Width { get; }

    public int Height { get; }

    /// <summary>Whether a pixel is one byte of grey; otherwise it is red, green and blue.</summary>
    public bool IsGrey { get; }

    internal byte[] Pixels { get; }

    /// <summary>Reads a file of at most so many pixels per side.</summary>
    /// <exception cref="FormatException">Not a PNG, damaged, or larger; the message says which, without a full stop.</exception>
    public static PngPicture Read(ReadOnlySpan<byte> file, int mostPixels)
    {
        ReadOnlySpan<byte> signature = [0x89, (byte)'P', (byte)'N', (byte)'G', 13, 10, 26, 10];
        if (!file.StartsWith(signature))
        {
            throw new FormatException("it is no PNG file");
        }

        var chunks = new PngChunks(file[signature.Length..].ToArray());
        var header = PngHeader.Read(chunks.Only("IHDR"));
        if (header.Width > mostPixels || header.Height > mostPixels)
        {
            throw new FormatException(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"it is {header.Width} × {header.Height} pixels large, and at most {mostPixels} a side are read"
                )
            );
        }
        if ((long)header.Width * header.Height > MostInAll)
        {
            throw new FormatException(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"it is {header.Width} × {header.Height} pixels large, and at most {MostInAll / 1_000_000} million in all are read"
                )
            );
        }

        return new PngPicture(header.Width, header.Height, header.IsGrey, Unpacked(header, chunks));
    }

    /// <summary>Unpacks at most what the header promises: a small file can unpack to a very large one.</summary>
    static byte[] Unpacked(PngHeader header, PngChunks chunks)
    {
        try
        {
            using var rows = new ZLibStream(new MemoryStream(chunks.All("IDAT")), CompressionMode.Decompress);
            return new PngPixels(header, chunks.Find("PLTE"), chunks.Find("tRNS"), rows).Read();
        }
        catch (EndOfStreamException)
        {
            throw new FormatException("it ends before all of its pixels are there");
        }
        catch (InvalidDataException)
        {
            throw new FormatException("its pixels are damaged");
        }
    }
}
