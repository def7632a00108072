using Spoolbook.Printing;
using Spoolbook.Reading.Files;
using Spoolbook.Writing;

namespace Spoolbook.Beginning;

/// <summary>The folder of a new production: nothing is in it before, and all of the production afterwards.</summary>
internal static class NewFolder
{
    static readonly string[] _ours = [SheetNames.Rolls, WorkFolder.SchemasName];

    /// <summary>Why nothing can begin there; null where it can.</summary>
    /// <param name="named">As it was typed.</param>
    public static string? Objection(string path, string named) =>
        File.Exists(path) ? $"'{named}' is a file. Name a folder that is not there yet."
        : !Directory.Exists(path) || Holds(path) is not { } there ? null
        : $"'{named}' holds {there} already. Name a folder that is empty, or not there yet.";

    /// <summary>Writes all of it, or nothing.</summary>
    /// <exception cref="IOException">Something is there by now, or it cannot be written.</exception>
    public static void Write(string folder, IReadOnlyList<BegunFile> files, CommandEnvironment around)
    {
        var made = new List<string>();
        using var work = WorkFolder.Open(folder, "new", around);
        if (Holds(folder) is { } there)
        {
            throw new IOException($"{folder} holds {there} by now. Nothing was written.");
        }

        try
        {
            foreach (var inside in files.Select(f => Path.GetDirectoryName(f.Name)!).Where(f => f.Length > 0).Distinct())
            {
                var path = Path.Combine(folder, inside);
                if (!Directory.Exists(path))
                {
                    around.Disk.MakeFolder(path);
                    made.Add(path);
                }
            }

            work.Put([.. files.Select(f => new FileChange(f.Name, [.. f.Bytes], FileState.Nothing))]);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            foreach (var path in made.Where(path => !Directory.EnumerateFileSystemEntries(path).Any()))
            {
                around.Disk.DeleteFolder(path);
            }

            throw;
        }
    }

    // Hidden things (a repository's, a desktop's) are none of the production's, and a folder of ours without a file is what a kill leaves.
    static string? Holds(string folder) =>
        Directory
            .EnumerateFileSystemEntries(folder)
            .Where(path => !Path.GetFileName(path).StartsWith('.') && !IsEmptyOne(path))
            .Select(path => Plain.Escaped(Path.GetFileName(path)))
            .Order(StringComparer.Ordinal)
            .FirstOrDefault();

    static bool IsEmptyOne(string path) =>
        _ours.Contains(Path.GetFileName(path))
        && Directory.Exists(path)
        && !Directory.EnumerateFileSystemEntries(path).Any(e => !IsHidden(e));

    static bool IsHidden(string path) => Path.GetFileName(path).StartsWith('.');
}
