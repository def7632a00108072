using System.Collections.Immutable;
using System.Text;
using Spoolbook.Reading.Files;

namespace Spoolbook.Beginning;

/// <summary>A production that is not on the disk yet, so that it is checked before it is written.</summary>
internal sealed class BegunFiles(ImmutableArray<BegunFile> files) : IProductionFiles
{
    public bool IsOneFile => false;

    public ImmutableArray<string> Names { get; } = [.. files.Select(f => f.Name).Where(SheetNames.EndsAsSheet)];

    public ImmutableArray<PassedFile> PassedOver =>
        [
            .. files
                .Where(f => f.Name.StartsWith(SheetNames.Rolls, StringComparison.Ordinal))
                .Select(f => new PassedFile(f.Name, Encoding.UTF8.GetString([.. f.Bytes]))),
        ];

    public FileText Open(string name) => FileText.Of(Encoding.UTF8.GetString([.. files.First(f => f.Name == name).Bytes]));

    public PictureFile OpenPicture(string path) =>
        files.FirstOrDefault(f => f.Name == path) is { } file ? PictureFile.Of(file.Bytes.AsSpan()) : PictureFile.Missing;
}
