using System.Formats.Tar;

namespace Spoolbook.Reading.Files;

/// <summary>
/// Tells an ordinary file from a pipe or a device. Those are never opened: a pipe keeps its reader waiting, and a device may
/// never end.
/// </summary>
public static class OrdinaryFile
{
    /// <summary>What is at a path instead of an ordinary file, in words: <c>a pipe</c>; null where the file is ordinary.</summary>
    /// <param name="path">A path without links, from <see cref="RealPath"/>.</param>
    public static string? InsteadOf(string path)
    {
        // Pipes and devices have no length, so a file with one is ordinary and needs no second look.
        if (new FileInfo(path).Length > 0)
        {
            return null;
        }

        return TypeOf(path) switch
        {
            TarEntryType.RegularFile => null,
            TarEntryType.Fifo => "a pipe",
            TarEntryType.CharacterDevice or TarEntryType.BlockDevice => "a device",
            TarEntryType.Directory => "a folder",
            _ => "a socket",
        };
    }

    // The framework reads a file's type without opening the file in only one place: where it writes the head of an archive.
    static TarEntryType TypeOf(string path)
    {
        const int TypeAt = 156;
        using var archive = new MemoryStream();
        try
        {
            using var writer = new TarWriter(archive, TarEntryFormat.Ustar, leaveOpen: true);
            writer.WriteEntry(path, "file");
        }
        catch (IOException)
        {
            // An archive cannot hold a socket.
            return TarEntryType.HardLink;
        }

        return (TarEntryType)archive.GetBuffer()[TypeAt];
    }
}
