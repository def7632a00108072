using System.Collections.Immutable;
using System.Text;

namespace Spoolbook.Reading.Files;

/// <summary>A production whose files are in memory.</summary>
public sealed class TextFiles : IProductionFiles
{
    readonly ImmutableSortedDictionary<string, byte[]> _files;
    readonly ImmutableSortedDictionary<string, byte[]> _pictures;

    TextFiles(IEnumerable<(string Name, byte[] Bytes)> files, bool isOneFile)
    {
        _files = files.ToImmutableSortedDictionary(f => f.Name, f => f.Bytes, StringComparer.Ordinal);
        _pictures = ImmutableSortedDictionary.Create<string, byte[]>(StringComparer.Ordinal);
        IsOneFile = isOneFile;
    }

    TextFiles(ImmutableSortedDictionary<string, byte[]> files, ImmutableSortedDictionary<string, byte[]> pictures, bool isOneFile) =>
        (_files, _pictures, IsOneFile) = (files, pictures, isOneFile);

    /// <inheritdoc/>
    public bool IsOneFile { get; }

    /// <inheritdoc/>
    public ImmutableArray<string> Names => [.. _files.Keys.Where(name => SheetNames.EndsAsSheet(name) && !IsAbove(name))];

    /// <inheritdoc/>
    public SchoolPlace? School => _files.Keys.FirstOrDefault(IsAbove) is { } above ? new SchoolPlace(above, Folder) : null;

    /// <summary>Its path from the school's folder.</summary>
    public string Folder { get; private init; } = "ferry";

    /// <summary>The same in another folder of the school.</summary>
    public TextFiles At(string folder) => new(_files, _pictures, IsOneFile) { Folder = folder };

    /// <inheritdoc/>
    public ImmutableArray<PassedFile> PassedOver =>
        [
            .. from file in _files
            where !SheetNames.EndsAsSheet(file.Key) && file.Key != SheetNames.Ledger
            select new PassedFile(file.Key, Encoding.UTF8.GetString(file.Value)),
        ];

    /// <inheritdoc/>
    public byte[]? Ledger => _files.GetValueOrDefault(SheetNames.Ledger);

    /// <summary>A folder of files by their paths.</summary>
    public static TextFiles Of(params (string Name, string Text)[] files) =>
        new(files.Select(f => (f.Name, Encoding.UTF8.GetBytes(f.Text))), false);

    public static TextFiles OfBytes(params (string Name, byte[] Bytes)[] files) => new(files, false);

    public static TextFiles OneFile(string text, string name = "production.yaml") => new([(name, Encoding.UTF8.GetBytes(text))], true);

    // The school's file is the only one above the folder.
    static bool IsAbove(string name) => name.StartsWith("../", StringComparison.Ordinal);

    /// <inheritdoc/>
    public FileText Open(string name) => TextDecoder.Decode(_files[name]);

    /// <inheritdoc/>
    public PictureFile OpenPicture(string path) =>
        !PictureFile.StaysInside(path) ? PictureFile.Outside
        : _pictures.TryGetValue(path, out var bytes) ? PictureFile.Of(bytes)
        : PictureFile.Missing;

    public TextFiles With(string picture, byte[] bytes) => new(_files, _pictures.SetItem(picture, bytes), IsOneFile) { Folder = Folder };
}
