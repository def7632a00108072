using System.Buffers.Binary;

namespace Spoolbook.Pdf.Images;

/// <summary>The named chunks of a PNG file.</summary>
sealed class PngChunks
{
    readonly List<(string Name, byte[] Data)> _chunks = [];

    public PngChunks(byte[] file)
    {
        const int Frame = 12;
        var at = 0;
        while (at + Frame <= file.Length && (_chunks.Count == 0 || _chunks[^1].Name != "IEND"))
        {
            var length = BinaryPrimitives.ReadUInt32BigEndian(file.AsSpan(at));
            if (length > file.Length - at - Frame)
            {
                throw new FormatException("it is cut off");
            }

            var named = file.AsSpan(at + 4, 4 + (int)length);
            if (BinaryPrimitives.ReadUInt32BigEndian(file.AsSpan(at + 8 + (int)length)) != CyclicCheck(named))
            {
                throw new FormatException("it is damaged: a check sum does not hold");
            }

            _chunks.Add((System.Text.Encoding.ASCII.GetString(named[..4]), named[4..].ToArray()));
            at += Frame + (int)length;
        }
        if (_chunks.Count == 0 || _chunks[^1].Name != "IEND")
        {
            throw new FormatException("it is cut off");
        }
    }

    public byte[]? Find(string name) => _chunks.Where(c => c.Name == name).Select(c => c.Data).FirstOrDefault();

    public byte[] Only(string name) => Find(name) ?? throw new FormatException($"it has no {name} chunk");

    public byte[] All(string name) => [.. _chunks.Where(c => c.Name == name).SelectMany(c => c.Data)];

    /// <summary>CRC-32 by ISO 3309, bit by bit.</summary>
    static uint CyclicCheck(ReadOnlySpan<byte> data)
    {
        var sum = uint.MaxValue;
        foreach (var b in data)
        {
            sum ^= b;
            for (var bit = 0; bit < 8; bit++)
            {
                sum = (sum & 1) != 0 ? sum >> 1 ^ 0xEDB88320 : sum >> 1;
            }
        }
        return ~sum;
    }
}
