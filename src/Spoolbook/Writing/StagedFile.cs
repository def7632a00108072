namespace Spoolbook.Writing;

/// <summary>
/// A file written beside the one whose place it takes, under a name that nobody else has, and on the disk before it
/// does so. The rename is one step: whoever looks, even after the power went, finds the old file whole or the new one.
/// </summary>
internal sealed class StagedFile : IDisposable
{
    readonly string _path;
    readonly string _beside;

    /// <summary>Writes the bytes beside the file. A link there is not followed: the name is new or the writing fails.</summary>
    public StagedFile(string path, ReadOnlySpan<byte> bytes)
    {
        _path = path;
        _beside = Path.Combine(Path.GetDirectoryName(path) ?? "", $".{Path.GetFileName(path)}.{Path.GetRandomFileName()}");
        try
        {
            using var file = new FileStream(_beside, FileMode.CreateNew, FileAccess.Write, FileShare.None);
            file.Write(bytes);
            file.Flush(flushToDisk: true);
        }
        catch
        {
            File.Delete(_beside);
            throw;
        }

        if (!OperatingSystem.IsWindows() && File.Exists(path))
        {
            File.SetUnixFileMode(_beside, File.GetUnixFileMode(path));
        }
    }

    /// <summary>Puts it in its place.</summary>
    public void Put() => File.Move(_beside, _path, overwrite: true);

    /// <summary>Clears away what was not put in place.</summary>
    public void Dispose() => File.Delete(_beside);
}
