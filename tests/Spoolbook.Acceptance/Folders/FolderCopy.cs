using System.Security.Cryptography;
using System.Text;

namespace Spoolbook.Acceptance.Folders;

/// <summary>A copy of a production's folder that a test may write into; deleted after the test.</summary>
sealed class FolderCopy : IDisposable
{
    /// <summary>Copies a production to a folder of its own.</summary>
    public FolderCopy(string folder)
    {
        Path = Directory.CreateTempSubdirectory("spoolbook-").FullName;
        foreach (var file in Repository.FilesOf(folder))
        {
            var copy = Inside(System.IO.Path.GetRelativePath(folder, file));
            File.Copy(file, copy);
        }
    }

    public string Path { get; }

    /// <summary>Writes a file in it.</summary>
    public void Write(string name, string text) => File.WriteAllText(Inside(name), text, new UTF8Encoding(false));

    /// <summary>Every file with a digest of its bytes, in order.</summary>
    public IReadOnlyList<string> Contents() =>
        [
            .. Directory
                .EnumerateFiles(Path, "*", SearchOption.AllDirectories)
                .Order(StringComparer.Ordinal)
                .Select(file =>
                    $"{System.IO.Path.GetRelativePath(Path, file)} {Convert.ToHexString(SHA256.HashData(File.ReadAllBytes(file)))}"
                ),
        ];

    public void Dispose() => Directory.Delete(Path, recursive: true);

    string Inside(string name)
    {
        var path = System.IO.Path.Combine(Path, name);
        Directory.CreateDirectory(System.IO.Path.GetDirectoryName(path)!);
        return path;
    }
}
