using System.Buffers.Binary;
using System.IO.Compression;

namespace Spoolbook.Pdf.Images;

/// <summary>
/// A PNG read as an archival page can hold it: eight bits a channel, grey or colour, and no transparency: what shines
/// through is laid on white. Of the standard (ISO/IEC 15948) every kind of pixel is read; colour corrections are not.
/// </summary>
public sealed class PngPicture
{
    PngPicture(int width, int height, bool isGrey, byte[] pixels) => (Width, Height, IsGrey, Pixels) = (width, height, isGrey, pixels);

    public int Width { get; }

    public int Height { get; }

    /// <summary>One byte a pixel, or red, green and blue.</summary>
    public bool IsGrey { get; }

    internal byte[] Pixels { get; }

    /// <summary>Reads a file of at most so many pixels a side.</summary>
    /// <exception cref="FormatException">It is no PNG, is damaged, or is larger; the message says which, without a full stop.</exception>
    public static PngPicture Read(ReadOnlySpan<byte> file, int mostPixels)
    {
        ReadOnlySpan<byte> signature = [0x89, (byte)'P', (byte)'N', (byte)'G', 13, 10, 26, 10];
        if (!file.StartsWith(signature)) throw new FormatException("it is no PNG file");

        var chunks = new PngChunks(file[signature.Length..].ToArray());
        var header = PngHeader.Read(chunks.Only("IHDR"));
        if (header.Width > mostPixels || header.Height > mostPixels)
        {
            throw new FormatException(FormattableString.Invariant($"it is {header.Width} × {header.Height} pixels large, and at most {mostPixels} a side are read"));
        }
        var pixels = new PngPixels(header, chunks.Find("PLTE"), chunks.Find("tRNS"), Unpacked(chunks.All("IDAT"), header.PackedLength)).Read();
        bool grey = header.IsGrey;
        return new PngPicture(header.Width, header.Height, grey, pixels);
    }

    /// <summary>Never more than the header promises: a small file can unpack to a very large one.</summary>
    static byte[] Unpacked(byte[] data, int length)
    {
        var unpacked = new byte[length];
        try
        {
            using var zlib = new ZLibStream(new MemoryStream(data), CompressionMode.Decompress);
            int read = zlib.ReadAtLeast(unpacked, length, throwOnEndOfStream: false);
            return read == length ? unpacked : throw new FormatException("it ends before all of its pixels are there");
        }
        catch (InvalidDataException)
        {
            throw new FormatException("its pixels are damaged");
        }
    }
}

/// <summary>The named stretches that a PNG file consists of.</summary>
sealed class PngChunks
{
    readonly List<(string Name, byte[] Data)> _chunks = [];

    public PngChunks(byte[] file)
    {
        const int Frame = 12;
        int at = 0;
        while (at + Frame <= file.Length && (_chunks.Count == 0 || _chunks[^1].Name != "IEND"))
        {
            uint length = BinaryPrimitives.ReadUInt32BigEndian(file.AsSpan(at));
            if (length > file.Length - at - Frame) throw new FormatException("it is cut off");
            var named = file.AsSpan(at + 4, 4 + (int)length);
            if (BinaryPrimitives.ReadUInt32BigEndian(file.AsSpan(at + 8 + (int)length)) != CyclicCheck(named)) throw new FormatException("it is damaged: a check sum does not hold");
            _chunks.Add((System.Text.Encoding.ASCII.GetString(named[..4]), named[4..].ToArray()));
            at += Frame + (int)length;
        }
        if (_chunks.Count == 0 || _chunks[^1].Name != "IEND") throw new FormatException("it is cut off");
    }

    public byte[]? Find(string name) => _chunks.Where(c => c.Name == name).Select(c => c.Data).FirstOrDefault();

    public byte[] Only(string name) => Find(name) ?? throw new FormatException($"it has no {name} chunk");

    public byte[] All(string name) => [.. _chunks.Where(c => c.Name == name).SelectMany(c => c.Data)];

    /// <summary>CRC-32 as ISO 3309 has it, bit by bit.</summary>
    static uint CyclicCheck(ReadOnlySpan<byte> data)
    {
        uint sum = uint.MaxValue;
        foreach (byte b in data)
        {
            sum ^= b;
            for (int bit = 0; bit < 8; bit++) sum = (sum & 1) != 0 ? sum >> 1 ^ 0xEDB88320 : sum >> 1;
        }
        return ~sum;
    }
}
