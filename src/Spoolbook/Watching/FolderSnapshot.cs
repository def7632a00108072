using System.Collections.Immutable;
using Spoolbook.Reading.Files;
using Spoolbook.Writing;

namespace Spoolbook.Watching;

/// <summary>
/// What a production's files look like from outside: each with its length and the time of its last change. Looked at anew each time, so
/// that an editor may replace a file, and a folder may go and come back: no notice of the system's is lost with it.
/// </summary>
internal sealed class FolderSnapshot
{
    const int MostFiles = 5_000,
        MostDown = 3;

    static readonly string[] _notRead = [WorkFolder.PapersName, WorkFolder.SchemasName];

    readonly ImmutableSortedDictionary<string, (long Length, long Changed)> _files;

    FolderSnapshot(bool exists, ImmutableSortedDictionary<string, (long Length, long Changed)> files) => (Exists, _files) = (exists, files);

    /// <summary>Whether the production is there at all.</summary>
    public bool Exists { get; }

    /// <summary>The names that are new, changed or gone since another one, in order.</summary>
    public ImmutableArray<string> Since(FolderSnapshot before) =>
        [
            .. _files
                .Keys.Union(before._files.Keys)
                .Where(name => !_files.TryGetValue(name, out var now) || !before._files.TryGetValue(name, out var then) || now != then)
                .Order(StringComparer.Ordinal),
        ];

    /// <summary>Whether nothing has changed since another one.</summary>
    public bool IsSame(FolderSnapshot before) => Exists == before.Exists && Since(before).IsEmpty;

    /// <summary>The files of a production, and of the user's own templates.</summary>
    /// <param name="production">Its folder, or its one file.</param>
    /// <param name="apart">Folders in it that are not its record: where papers go.</param>
    public static FolderSnapshot Of(string production, string? templates, IReadOnlyCollection<string> apart)
    {
        var files = ImmutableSortedDictionary.CreateBuilder<string, (long, long)>(StringComparer.Ordinal);
        if (!Path.Exists(production))
        {
            return new FolderSnapshot(false, files.ToImmutable());
        }

        var folder = Directory.Exists(production) ? production : Path.GetDirectoryName(production)!;
        var isOneFile = folder != production;
        Collect(folder, folder, isOneFile ? 0 : MostDown, path =>
            Path.GetFullPath(path) == production || !isOneFile || !SheetNames.EndsAsSheet(path)
        );
        if (SchoolPlace.Above(folder, isOneFile ? production : null) is { } school)
        {
            files[school.Name] = Look(new FileInfo(Path.Combine(folder, school.Name)));
        }

        if (templates is not null)
        {
            Collect(templates, templates, 0, _ => true);
        }

        return new FolderSnapshot(true, files.ToImmutable());

        void Collect(string root, string at, int down, Func<string, bool> wanted)
        {
            foreach (var entry in EntriesOf(at))
            {
                if (entry.Name.StartsWith('.') || files.Count >= MostFiles)
                {
                    continue;
                }

                if (entry is FileInfo file)
                {
                    if (wanted(file.FullName))
                    {
                        files[Path.GetRelativePath(root, file.FullName).Replace('\\', '/')] = Look(file);
                    }
                }
                else if (down > 0 && !_notRead.Contains(entry.Name) && !apart.Contains(entry.FullName) && entry.LinkTarget is null)
                {
                    Collect(root, entry.FullName, down - 1, wanted);
                }
            }
        }
    }

    static IReadOnlyList<FileSystemInfo> EntriesOf(string folder)
    {
        try
        {
            return [.. new DirectoryInfo(folder).EnumerateFileSystemInfos().Take(MostFiles)];
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // It went away in this moment, or cannot be looked into.
            return [];
        }
    }

    static (long Length, long Changed) Look(FileInfo file)
    {
        try
        {
            return (file.Length, file.LastWriteTimeUtc.Ticks);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return (-1, 0);
        }
    }
}
