using System.Globalization;
using System.IO.Compression;
using System.Xml;

namespace Spoolbook.Entry.Tables;

/// <summary>The parts of a workbook. Unpacks only what is needed, and at most 80 MB per part.</summary>
sealed class XlsxPackage : IDisposable
{
    static readonly XmlReaderSettings _settings = new()
    {
        DtdProcessing = DtdProcessing.Prohibit,
        XmlResolver = null,
        IgnoreComments = true,
        IgnoreProcessingInstructions = true,
        MaxCharactersInDocument = Limits.MostUnpacked,
    };

    readonly string _name;
    readonly ZipArchive _zip;
    readonly Dictionary<string, ZipArchiveEntry> _parts = new(StringComparer.OrdinalIgnoreCase);

    public XlsxPackage(string name, byte[] bytes)
    {
        _name = name;
        try
        {
            _zip = new ZipArchive(new MemoryStream(bytes, writable: false), ZipArchiveMode.Read);
            if (_zip.Entries.Count > Limits.MostParts)
            {
                throw Broken("it has more parts than a workbook has");
            }

            foreach (var entry in _zip.Entries)
            {
                _parts.TryAdd(entry.FullName.Replace('\\', '/').TrimStart('/'), entry);
            }
        }
        catch (InvalidDataException)
        {
            throw Broken("it is cut off or damaged");
        }
    }

    public bool Has(string part) => _parts.ContainsKey(part);

    /// <summary>Whether it is an OpenDocument file and not an Excel workbook.</summary>
    public bool IsOpenDocument => Has("mimetype") && Has("content.xml");

    /// <summary>Reads a part, if there is one.</summary>
    /// <exception cref="TableFault">The part is not XML, or is far too long.</exception>
    public void Read(string part, Action<XmlReader> read)
    {
        if (!_parts.TryGetValue(part, out var entry))
        {
            return;
        }

        try
        {
            using var stream = new BoundedStream(entry.Open(), Limits.MostUnpacked);
            using var xml = XmlReader.Create(stream, _settings);
            read(xml);
        }
        catch (BoundedStream.TooLongException)
        {
            throw Broken(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"its part {part} unpacks to more than " + $"{Limits.MostUnpacked / 1_000_000} MB"
                )
            );
        }
        catch (Exception e) when (e is XmlException or InvalidDataException or IOException or FormatException or OverflowException)
        {
            throw Broken($"its part {part} is damaged");
        }
    }

    public void Dispose() => _zip.Dispose();

    TableFault Broken(string why) =>
        new(
            _name,
            $"The workbook cannot be read: {why}.",
            "Open it in a spreadsheet program and save it anew as .xlsx, or save the sheet as .csv."
        );

    /// <summary>A stream that throws past its allowed length, whatever length the package claims.</summary>
    sealed class BoundedStream(Stream inner, long most) : Stream
    {
        long _left = most;

        public override bool CanRead => true;

        public override bool CanSeek => false;

        public override bool CanWrite => false;

        public override long Length => throw new NotSupportedException();

        public override long Position
        {
            get => throw new NotSupportedException();
            set => throw new NotSupportedException();
        }

        public override int Read(byte[] buffer, int offset, int count) => Read(buffer.AsSpan(offset, count));

        public override int Read(Span<byte> buffer)
        {
            var read = inner.Read(buffer);
            _left -= read;
            return _left >= 0 ? read : throw new TooLongException();
        }

        public override void Flush() { }

        public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

        public override void SetLength(long value) => throw new NotSupportedException();

        public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();

        protected override void Dispose(bool disposing)
        {
            inner.Dispose();
            base.Dispose(disposing);
        }

        public sealed class TooLongException : Exception;
    }
}
