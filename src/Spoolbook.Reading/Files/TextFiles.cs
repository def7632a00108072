using System.Collections.Immutable;
using System.Text;

namespace Spoolbook.Reading.Files;

/// <summary>A production whose files are in memory.</summary>
public sealed class TextFiles : IProductionFiles
{
    readonly ImmutableSortedDictionary<string, byte[]> _files;

    TextFiles(IEnumerable<(string Name, byte[] Bytes)> files, bool isOneFile)
    {
        _files = files.ToImmutableSortedDictionary(f => f.Name, f => f.Bytes, StringComparer.Ordinal);
        IsOneFile = isOneFile;
    }

    /// <inheritdoc/>
    public bool IsOneFile { get; }

    /// <inheritdoc/>
    public ImmutableArray<string> Names => [.. _files.Keys];

    /// <summary>A folder of files by their paths.</summary>
    public static TextFiles Of(params (string Name, string Text)[] files) => new(files.Select(f => (f.Name, Encoding.UTF8.GetBytes(f.Text))), false);

    /// <summary>A folder of files as bytes.</summary>
    public static TextFiles OfBytes(params (string Name, byte[] Bytes)[] files) => new(files, false);

    /// <summary>A production in one file.</summary>
    public static TextFiles OneFile(string text, string name = "production.yaml") => new([(name, Encoding.UTF8.GetBytes(text))], true);

    /// <inheritdoc/>
    public FileText Open(string name) => TextDecoder.Decode(_files[name]);
}
