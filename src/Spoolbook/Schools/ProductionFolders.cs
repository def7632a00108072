using System.Collections.Immutable;
using Spoolbook.Reading.Files;
using Spoolbook.Writing;

namespace Spoolbook.Schools;

/// <summary>The productions that lie in a folder or anywhere below it, as in a school's.</summary>
internal static class ProductionFolders
{
    // A folder named by mistake, the root of a disk say, must not be walked for minutes.
    const int MostFolders = 20_000;

    static readonly EnumerationOptions Plain = new() { AttributesToSkip = FileAttributes.ReparsePoint, IgnoreInaccessible = true };

    /// <summary>
    /// Full paths of the productions, in the order of their names. Nothing below a production is another; links are not followed.
    /// </summary>
    public static ImmutableArray<string> Below(string folder)
    {
        var found = ImmutableArray.CreateBuilder<string>();
        var left = MostFolders;
        Look(Path.GetFullPath(folder));
        return found.ToImmutable();

        void Look(string at)
        {
            if (left-- <= 0)
            {
                return;
            }

            if (FolderFiles.HoldsProduction(at))
            {
                found.Add(at);
                return;
            }

            foreach (var below in Folders(at))
            {
                Look(below);
            }
        }
    }

    static IEnumerable<string> Folders(string folder)
    {
        try
        {
            return Directory
                .EnumerateDirectories(folder, "*", Plain)
                .Where(path => Path.GetFileName(path) is var name && !name.StartsWith('.') && name != WorkFolder.PapersName)
                .Order(StringComparer.Ordinal);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return [];
        }
    }
}
