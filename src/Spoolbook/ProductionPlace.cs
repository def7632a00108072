using Spoolbook.Reading.Files;
using Spoolbook.Writing;

namespace Spoolbook;

/// <summary>
/// Which production a command is about: the one named, or the one that the user is in. A file of a production means its production,
/// since a person who edits <c>rolls/r01.yaml</c> names that.
/// </summary>
internal static class ProductionPlace
{
    // Looking farther up than this is no longer looking where one works.
    const int MostFoldersUp = 32;

    /// <summary>The folder or one file that a word of the command line means; null where nothing is named and none is here.</summary>
    public static string? Of(string? named, CommandEnvironment around) => named is null ? Here(around) : Named(named, around);

    /// <summary>The current folder, or the nearest above it that holds a production; null where there is none.</summary>
    public static string? Here(CommandEnvironment around) =>
        AtOrAbove(around.Folder) is { } folder ? Path.GetRelativePath(around.Folder, folder) : null;

    /// <summary>Why there is nothing to work on; null where there is something.</summary>
    public static string? Objection(string? named, CommandEnvironment around) =>
        named is null
            ? Here(around) is null
                ? "there is no production.yaml here or in a folder above. Name the production's folder."
                : null
            : Path.Exists(Path.Combine(around.Folder, named))
                ? null
                : $"there is no folder or file '{named}' here. Name the folder that holds production.yaml.";

    static string Named(string named, CommandEnvironment around)
    {
        var path = Path.GetFullPath(Path.Combine(around.Folder, named));
        var folder =
            File.Exists(path) ? OfFile(path)
            : IsPartOfOne(path) ? AtOrAbove(path)
            : null;
        return folder is null ? named : Relative(folder, named, around);
    }

    // As absolute or as relative as it was typed: messages show it.
    static string Relative(string folder, string named, CommandEnvironment around) =>
        Path.IsPathRooted(named) ? folder : Path.GetRelativePath(around.Folder, folder);

    static bool IsPartOfOne(string folder) =>
        !FolderFiles.HoldsProduction(folder)
        && Path.GetFileName(folder) is SheetNames.Rolls or SheetNames.Papers or WorkFolder.SchemasName
        && Path.GetDirectoryName(folder) is { } above
        && FolderFiles.HoldsProduction(above);

    // Null where the file is a production of its own, or of none.
    static string? OfFile(string path)
    {
        var folder = Path.GetDirectoryName(path)!;
        if (IsWhole(path))
        {
            return null;
        }

        if (!SheetNames.EndsAsSheet(path))
        {
            return AtOrAbove(folder);
        }

        if (Path.GetFileName(folder) == SheetNames.Rolls)
        {
            return Path.GetDirectoryName(folder) is { } above && FolderFiles.HoldsProduction(above) ? above : null;
        }

        return SheetNames.Kinds.Contains(SheetNames.StemOf(path).ToLowerInvariant()) && FolderFiles.HoldsProduction(folder) ? folder : null;
    }

    // Only a file with all of it has rolls and the lots that they were loaded from.
    static bool IsWhole(string path)
    {
        try
        {
            var real = RealPath.Of(path);
            if (OrdinaryFile.InsteadOf(real) is not null || new FileInfo(real).Length > FileText.MostBytes)
            {
                return false;
            }

            var lines = File.ReadLines(real).ToList();
            return ((string[])["rolls:", "lots:"]).All(key => lines.Any(line => line.StartsWith(key, StringComparison.Ordinal)));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }

    static string? AtOrAbove(string folder) =>
        Above(Path.GetFullPath(folder)).Take(MostFoldersUp).FirstOrDefault(FolderFiles.HoldsProduction);

    static IEnumerable<string> Above(string folder)
    {
        for (var at = folder; at is not null; at = Path.GetDirectoryName(at))
        {
            yield return at;
        }
    }
}
