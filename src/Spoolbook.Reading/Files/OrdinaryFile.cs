using System.Formats.Tar;

namespace Spoolbook.Reading.Files;

/// <summary>
/// Tells an ordinary file from a pipe or a device, which are never opened: a pipe keeps whoever opens it waiting, and a device may
/// never end.
/// </summary>
public static class OrdinaryFile
{
    /// <summary>What is at a path in place of an ordinary file, in words: <c>a pipe</c>; null where one is there.</summary>
    /// <param name="path">A path without links, of <see cref="RealPath"/>.</param>
    public static string? InsteadOf(string path)
    {
        // Neither pipe nor device has a length, so all else is told at once.
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

    // The framework looks at the type of a file without opening it in one place only: where it writes the head of an archive.
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
            // A socket is nothing that an archive holds.
            return TarEntryType.HardLink;
        }

        return (TarEntryType)archive.GetBuffer()[TypeAt];
    }
}
