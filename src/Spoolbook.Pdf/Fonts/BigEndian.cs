using System.Buffers.Binary;

namespace Spoolbook.Pdf.Fonts;

/// <summary>Reads and writes the numbers of a TrueType file, all big-endian.</summary>
static class BigEndian
{
    public static ushort U16(ReadOnlySpan<byte> data, int at) => BinaryPrimitives.ReadUInt16BigEndian(data[at..]);

    public static short I16(ReadOnlySpan<byte> data, int at) => BinaryPrimitives.ReadInt16BigEndian(data[at..]);

    public static uint U32(ReadOnlySpan<byte> data, int at) => BinaryPrimitives.ReadUInt32BigEndian(data[at..]);

    public static int Offset32(ReadOnlySpan<byte> data, int at) => (int)U32(data, at);

    public static void Put16(Span<byte> data, int at, int value) => BinaryPrimitives.WriteUInt16BigEndian(data[at..], (ushort)value);

    public static void Put32(Span<byte> data, int at, uint value) => BinaryPrimitives.WriteUInt32BigEndian(data[at..], value);
}
