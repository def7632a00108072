using System.Buffers.Binary;
using System.IO.Compression;
using System.Text;

namespace Spoolbook.Fuzz.Mutations;

/// <summary>Mutations that know PNG: chunks whose check sums hold, and pixels that unpack. What is no PNG they leave as it is.</summary>
internal static class PngKinds
{
    const int Head = 8;

    static readonly uint[] _numbers = [0, 1, 2, 3, 7, 8, 16, 255, 256, 600, 65535, 65536, 0x7FFFFFFF, 0x80000000, 0xFFFFFFFF];

    static readonly string[] _names = ["IHDR", "PLTE", "IDAT", "IEND", "tRNS", "gAMA", "iCCP", "sRGB", "tEXt", "acTL", "pHYs", "idat"];

    public static IReadOnlyList<MutationKind> All { get; } =
    [
        Chunks("change a chunk", (l, c) => Change(l, c, d => ByteKinds.All[c.Below(6)].Change(d, c))),
        Chunks("delete a chunk", (l, c) => l.RemoveAt(c.Below(l.Count))),
        Chunks("repeat a chunk", (l, c) => l.Insert(c.Below(l.Count), c.Of(l))),
        Chunks("swap two chunks", (l, c) => (l[0], l[^1]) = (l[c.Below(l.Count)], l[c.Below(l.Count)])),
        Chunks("another chunk's name", (l, c) => Named(l, c)),
        Chunks("another header", Header),
        Chunks("other pixels", Pixels),
        Chunks("a palette", (l, c) =>
            l.Insert(Math.Min(1, l.Count), (c.OneIn(3) ? "tRNS" : "PLTE", [.. Enumerable.Range(0, c.Below(800)).Select(_ => c.Byte())]))
        ),
    ];

    static MutationKind Chunks(string name, Action<List<(string Name, byte[] Data)>, Chance> change) => new(name, (bytes, chance) =>
        {
            var chunks = Read(bytes);
            if (chunks.Count == 0)
            {
                return bytes;
            }

            change(chunks, chance);
            return Written(bytes[..Head], chunks);
        });

    static List<(string Name, byte[] Data)> Read(byte[] bytes)
    {
        var chunks = new List<(string, byte[])>();
        var at = Head;
        while (bytes is [0x89, 0x50, ..] && at + 12 <= bytes.Length)
        {
            var length = (int)Math.Min(BinaryPrimitives.ReadUInt32BigEndian(bytes.AsSpan(at)), (uint)(bytes.Length - at - 12));
            chunks.Add((Encoding.Latin1.GetString(bytes, at + 4, 4), bytes[(at + 8)..(at + 8 + length)]));
            at += 12 + length;
        }

        return chunks;
    }

    static byte[] Written(byte[] head, List<(string Name, byte[] Data)> chunks)
    {
        using var file = new MemoryStream();
        file.Write(head);
        var number = new byte[4];
        foreach (var (name, data) in chunks)
        {
            byte[] named = [.. Encoding.Latin1.GetBytes(name), .. data];
            BinaryPrimitives.WriteInt32BigEndian(number, data.Length);
            file.Write(number);
            file.Write(named);
            BinaryPrimitives.WriteUInt32BigEndian(number, CyclicCheck(named));
            file.Write(number);
        }

        return file.ToArray();
    }

    static void Change(List<(string Name, byte[] Data)> chunks, Chance chance, Func<byte[], byte[]> change)
    {
        var at = chance.Below(chunks.Count);
        chunks[at] = (chunks[at].Name, change(chunks[at].Data));
    }

    static void Named(List<(string Name, byte[] Data)> chunks, Chance chance)
    {
        var at = chance.Below(chunks.Count);
        chunks[at] = (chance.Of(_names), chunks[at].Data);
    }

    static void Header(List<(string Name, byte[] Data)> chunks, Chance chance)
    {
        var at = chunks.FindIndex(c => c.Name == "IHDR");
        if (at < 0 || chunks[at].Data.Length < 13)
        {
            return;
        }

        var data = chunks[at].Data.ToArray();
        if (chance.OneIn(2))
        {
            BinaryPrimitives.WriteUInt32BigEndian(
                data.AsSpan(4 * chance.Below(2)),
                chance.OneIn(2) ? chance.Of(_numbers) : (uint)chance.Below(4000)
            );
        }
        else
        {
            data[8 + chance.Below(5)] = chance.Of<byte>([0, 1, 2, 3, 4, 6, 8, 16, 32, 255]);
        }

        chunks[at] = ("IHDR", data);
    }

    static void Pixels(List<(string Name, byte[] Data)> chunks, Chance chance)
    {
        var at = chunks.FindIndex(c => c.Name == "IDAT");
        if (at < 0)
        {
            return;
        }

        var raw = chance.OneIn(3) ? new byte[chance.Below(chance.OneIn(10) ? 4_000_000 : 4000)] : Unpacked(chunks[at].Data);
        raw = ByteKinds.All[chance.Below(8)].Change(raw, chance);
        using var packed = new MemoryStream();
        using (var deflate = new ZLibStream(packed, CompressionLevel.Fastest, leaveOpen: true))
        {
            deflate.Write(raw);
        }

        chunks[at] = ("IDAT", packed.ToArray());
    }

    static byte[] Unpacked(byte[] data)
    {
        try
        {
            using var inflate = new ZLibStream(new MemoryStream(data), CompressionMode.Decompress);
            var raw = new byte[100_000];
            return raw[..inflate.ReadAtLeast(raw, raw.Length, throwOnEndOfStream: false)];
        }
        catch (InvalidDataException)
        {
            return data;
        }
    }

    // CRC-32 as ISO 3309 has it.
    static uint CyclicCheck(byte[] data)
    {
        var sum = uint.MaxValue;
        foreach (var b in data)
        {
            sum ^= b;
            for (var bit = 0; bit < 8; bit++)
            {
                sum = (sum & 1) != 0 ? (sum >> 1) ^ 0xEDB88320 : sum >> 1;
            }
        }

        return ~sum;
    }
}
