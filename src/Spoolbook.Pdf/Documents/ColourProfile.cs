using System.Buffers.Binary;
using System.Text;

namespace Spoolbook.Pdf.Documents;

/// <summary>
/// The sRGB profile, built from its published figures (IEC 61966-2-1; primaries adapted to D50 as in the ICC's own
/// profiles). Building it saves shipping another maker's.
/// </summary>
static class ColourProfile
{
    const int HeaderLength = 128;
    const int CurvePoints = 1024;

    public static byte[] Srgb()
    {
        var curve = Curve();
        (string Tag, byte[] Data)[] tags =
        [
            ("desc", Description("sRGB IEC61966-2.1")),
            ("cprt", [.. "text\0\0\0\0"u8, .. "No copyright, use freely\0"u8]),
            ("wtpt", Xyz(0.9642, 1.0000, 0.8249)),
            ("rXYZ", Xyz(0.4361, 0.2225, 0.0139)),
            ("gXYZ", Xyz(0.3851, 0.7169, 0.0971)),
            ("bXYZ", Xyz(0.1431, 0.0606, 0.7141)),
            ("rTRC", curve),
            ("gTRC", curve),
            ("bTRC", curve),
        ];

        using var body = new MemoryStream();
        var directory = new byte[4 + 12 * tags.Length];
        BinaryPrimitives.WriteInt32BigEndian(directory, tags.Length);
        var curveAt = 0;
        for (var i = 0; i < tags.Length; i++)
        {
            var (tag, data) = tags[i];
            var at = HeaderLength + directory.Length + (int)body.Length;
            // The three channels share one curve.
            if (ReferenceEquals(data, curve) && curveAt > 0)
            {
                at = curveAt;
            }
            else
            {
                body.Write(data);
            }

            if (ReferenceEquals(data, curve) && curveAt == 0)
            {
                curveAt = at;
            }

            while (body.Length % 4 != 0)
            {
                body.WriteByte(0);
            }

            Encoding.ASCII.GetBytes(tag, directory.AsSpan(4 + 12 * i));
            BinaryPrimitives.WriteInt32BigEndian(directory.AsSpan(8 + 12 * i), at);
            BinaryPrimitives.WriteInt32BigEndian(directory.AsSpan(12 + 12 * i), data.Length);
        }
        return [.. Header(HeaderLength + directory.Length + (int)body.Length), .. directory, .. body.ToArray()];
    }

    static byte[] Header(int length)
    {
        var header = new byte[HeaderLength];
        BinaryPrimitives.WriteInt32BigEndian(header, length);
        BinaryPrimitives.WriteInt32BigEndian(header.AsSpan(8), 0x02100000);
        "mntrRGB XYZ "u8.CopyTo(header.AsSpan(12));
        // A fixed date keeps the profile the same in every file.
        foreach (var (at, value) in new[] { (24, 2026), (26, 1), (28, 1) })
        {
            BinaryPrimitives.WriteInt16BigEndian(header.AsSpan(at), (short)value);
        }
        "acsp"u8.CopyTo(header.AsSpan(36));
        Xyz(0.9642, 1.0000, 0.8249).AsSpan(8).CopyTo(header.AsSpan(68));
        return header;
    }

    static byte[] Description(string name)
    {
        var data = new byte[12 + name.Length + 1 + 4 + 4 + 2 + 1 + 67];
        "desc"u8.CopyTo(data);
        BinaryPrimitives.WriteInt32BigEndian(data.AsSpan(8), name.Length + 1);
        Encoding.ASCII.GetBytes(name, data.AsSpan(12));
        return data;
    }

    static byte[] Xyz(double x, double y, double z)
    {
        var data = new byte[20];
        "XYZ "u8.CopyTo(data);
        foreach (var (at, value) in new[] { (8, x), (12, y), (16, z) })
        {
            BinaryPrimitives.WriteInt32BigEndian(data.AsSpan(at), (int)Math.Round(value * 65536));
        }
        return data;
    }

    static byte[] Curve()
    {
        var data = new byte[12 + 2 * CurvePoints];
        "curv"u8.CopyTo(data);
        BinaryPrimitives.WriteInt32BigEndian(data.AsSpan(8), CurvePoints);
        for (var i = 0; i < CurvePoints; i++)
        {
            var v = i / (CurvePoints - 1.0);
            var linear = v <= 0.04045 ? v / 12.92 : Math.Pow((v + 0.055) / 1.055, 2.4);
            BinaryPrimitives.WriteUInt16BigEndian(data.AsSpan(12 + 2 * i), (ushort)Math.Round(linear * 65535));
        }
        return data;
    }
}
