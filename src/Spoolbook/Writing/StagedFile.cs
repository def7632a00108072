namespace Spoolbook.Writing;

/// <summary>
/// A file written to the disk beside the one that it replaces, under a name of its own. The rename is one step: even
/// after a power failure, the old file or the new one is there whole.
/// </summary>
internal sealed class StagedFile : IDisposable
{
    readonly string _path;
    readonly string _beside;

    /// <summary>Writes the bytes beside the file. Follows no link there: the name is new, or the writing fails.</summary>
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

    /// <summary>Replaces the file.</summary>
    public void Put() => File.Move(_beside, _path, overwrite: true);

    /// <summary>Deletes the file if it did not replace the other.</summary>
    public void Dispose() => File.Delete(_beside);
}
