using System.Collections.Immutable;
using System.Text;

namespace Spoolbook.Reading.Files;

/// <summary>
/// Files in a production's folder that are not read: all of them at the top and among the rolls, and in other folders those named
/// like a sheet. Hidden files, papers, schemas and templates are the program's own. A folder with a production of its own is
/// another production.
/// </summary>
static class PassedFiles
{
    const int MostEntries = 5_000;
    const int MostFoldersDown = 4;
    const int MostRead = 4_096;

    static readonly string[] NoSheets = [SheetNames.Papers, "schemas", "templates"];

    public static ImmutableArray<PassedFile> Find(string root, ImmutableArray<string> read)
    {
        var names = new List<string>();
        var left = MostEntries;
        Collect(root, "", 0, names, ref left);
        return
        [
            .. from name in names.Except(read, StringComparer.Ordinal)
            where !name.Contains('/') || IsAmongRolls(name) || SheetNames.HoldsSheetEnding(name)
            select new PassedFile(name, TopOf(Path.Combine(root, name))),
        ];
    }

    static bool IsAmongRolls(string name) => name.StartsWith(SheetNames.Rolls + "/", StringComparison.Ordinal);

    static void Collect(string root, string folder, int down, List<string> names, ref int left)
    {
        foreach (var entry in EntriesOf(Path.Combine(root, folder)))
        {
            var name = folder + entry;
            var path = Path.Combine(root, name);
            if (left-- <= 0)
            {
                return;
            }

            if (!Directory.Exists(path))
            {
                names.Add(name);
            }
            else if (down < MostFoldersDown && HoldsSheets(name, path))
            {
                Collect(root, name + "/", down + 1, names, ref left);
            }
        }
    }

    static IEnumerable<string> EntriesOf(string folder)
    {
        try
        {
            return
            [
                .. Directory
                    .EnumerateFileSystemEntries(folder)
                    .Take(MostEntries)
                    .Select(path => Path.GetFileName(path))
                    .Where(name => !name.StartsWith('.'))
                    .Order(StringComparer.Ordinal),
            ];
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return [];
        }
    }

    static bool HoldsSheets(string name, string path) =>
        name == SheetNames.Rolls
        || (!NoSheets.Contains(name) && new DirectoryInfo(path).LinkTarget is null && !FolderFiles.HoldsProduction(path));

    // Opens only a plain file with something in it: anything else could keep us waiting.
    static string TopOf(string path)
    {
        try
        {
            var file = new FileInfo(path);
            if (file.LinkTarget is not null || file.Length == 0)
            {
                return "";
            }

            using var stream = file.OpenRead();
            var bytes = new byte[MostRead];
            return Encoding.UTF8.GetString(bytes, 0, stream.ReadAtLeast(bytes, MostRead, throwOnEndOfStream: false)).TrimStart('\uFEFF');
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return "";
        }
    }
}
