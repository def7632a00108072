using System.Globalization;
using System.IO.Compression;
using System.Text;
using Spoolbook.Digests;

namespace Spoolbook.Pdf.Files;

/// <summary>
/// Numbered objects, the plain cross-reference table and the trailer. PDF 1.4 without object streams, as PDF/A-1
/// requires. The identifier is a digest of the objects, so the same pages make the same file.
/// </summary>
sealed class ObjectFile : IDisposable
{
    // Four bytes above 127 after the header mark the file as binary for mail and transfer programs.
    static readonly byte[] Header = [.. "%PDF-1.4\n%"u8, 0xE2, 0xE3, 0xCF, 0xD3, 10];

    // As much as most papers take, so that it seldom has to be copied as it grows.
    readonly MemoryStream _file = new(1 << 16);
    readonly List<long> _offsets = [0];

    public ObjectFile() => _file.Write(Header);

    /// <summary>A number for an object that is written later.</summary>
    public int Reserve()
    {
        _offsets.Add(0);
        return _offsets.Count - 1;
    }

    public int Add(string body)
    {
        var number = Reserve();
        Write(number, body);
        return number;
    }

    public void Write(int number, string body)
    {
        Begin(number);
        Put(body);
        Put("\nendobj\n");
    }

    public int AddStream(string entries, byte[] data)
    {
        var number = Reserve();
        WriteStream(number, entries, data);
        return number;
    }

    public void WriteStream(int number, string entries, byte[] data)
    {
        WritePlainStream(number, entries + "/Filter/FlateDecode", Compress(data));
    }

    /// <summary>A stream that must be readable without a decoder, as PDF/A requires of the metadata.</summary>
    public void WritePlainStream(int number, string entries, byte[] data)
    {
        Begin(number);
        Put($"<<{entries}/Length {PdfSyntax.Number(data.Length)}>>\nstream\n");
        _file.Write(data);
        Put("\nendstream\nendobj\n");
    }

    public byte[] Finish(int catalog, int information)
    {
        var identifier = Convert.ToHexString(Sha256.Of(_file.GetBuffer().AsSpan(0, (int)_file.Length))[..16]);
        var start = _file.Length;
        Put($"xref\n0 {PdfSyntax.Number(_offsets.Count)}\n0000000000 65535 f \n");
        foreach (var offset in _offsets.Skip(1))
        {
            Put(offset.ToString("0000000000", CultureInfo.InvariantCulture) + " 00000 n \n");
        }
        Put(
            $"trailer\n<</Size {PdfSyntax.Number(_offsets.Count)}/Root {PdfSyntax.Reference(catalog)}"
                + $"/Info {PdfSyntax.Reference(information)}/ID[<{identifier}><{identifier}>]>>\n"
                + $"startxref\n{start.ToString(CultureInfo.InvariantCulture)}\n%%EOF\n"
        );
        return _file.ToArray();
    }

    public void Dispose() => _file.Dispose();

    void Begin(int number)
    {
        _offsets[number] = _file.Length;
        Put($"{PdfSyntax.Number(number)} 0 obj\n");
    }

    void Put(string text)
    {
        var at = (int)_file.Length;
        _file.SetLength(at + text.Length);
        Encoding.Latin1.GetBytes(text, _file.GetBuffer().AsSpan(at, text.Length));
        _file.Position = _file.Length;
    }

    static byte[] Compress(byte[] data)
    {
        using var packed = new MemoryStream();
        using (var zlib = new ZLibStream(packed, CompressionLevel.Optimal, leaveOpen: true))
        {
            zlib.Write(data);
        }

        return packed.ToArray();
    }
}
