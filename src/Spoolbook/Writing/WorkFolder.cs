using Spoolbook.Printing;

namespace Spoolbook.Writing;

/// <summary>
/// A folder that this process alone writes in, for as long as this is open. Its lock, its journal and what is kept lie in a hidden
/// folder in it, which goes when there is nothing in it.
/// </summary>
internal sealed class WorkFolder : IDisposable
{
    public const string JournalName = "journal";

    public const string LastName = "last";

    public const string PapersName = "papers";

    public const string SchemasName = "schemas";

    const string Hidden = ".spoolbook";

    static readonly TimeSpan Usual = TimeSpan.FromSeconds(1);

    readonly string _command;
    readonly bool _isNew;
    readonly bool _isLookedAt;
    readonly IFileWork _disk;
    readonly string _id = Guid.NewGuid().ToString("N")[..12];
    FolderLock? _lock;
    int _staged;

    WorkFolder(string folder, string command, IFileWork disk, TimeSpan patience)
    {
        (Folder, _command, _disk) = (folder, command, disk);
        var hidden = InHidden(folder, "");
        if (FileState.LinkTarget(hidden) is not null || File.Exists(hidden))
        {
            throw new IOException($"{hidden} is no folder of Spoolbook's: move it away.");
        }

        _isNew = !Directory.Exists(folder);
        disk.MakeFolder(folder);
        _lock = FolderLock.Take(hidden, command, disk, patience);
    }

    // Only looked at: no folder is made, no lock taken, nothing put.
    WorkFolder(string folder, IFileWork disk) => (Folder, _command, _disk, _isLookedAt) = (folder, "", disk, true);

    public string Folder { get; }

    /// <summary>A folder to see what would be put there. Putting changes nothing.</summary>
    public static WorkFolder LookAt(string folder, CommandEnvironment around) => new(folder, around.Disk);

    /// <summary>What is at that name in the hidden folder; the hidden folder itself where the name is empty.</summary>
    public static string InHidden(string folder, string name) => Path.Combine(folder, Hidden, name).TrimEnd(Path.DirectorySeparatorChar);

    /// <summary>The name of a file in the hidden folder, from the folder.</summary>
    public static string NameInHidden(string name) => Hidden + "/" + name;

    /// <summary>The folder that a production lies in, which may be one file.</summary>
    public static string OfProduction(string path, CommandEnvironment around)
    {
        var full = Path.GetFullPath(Path.Combine(around.Folder, path));
        return File.Exists(full) ? Path.GetDirectoryName(full)! : full;
    }

    /// <summary>Takes the folder for this process, and settles what a command before it was cut short in.</summary>
    /// <param name="patience">How long to wait for another process; a second unless given.</param>
    public static WorkFolder Open(string folder, string command, CommandEnvironment around, TimeSpan? patience = null)
    {
        var open = new WorkFolder(folder, command, around.Disk, patience ?? Usual);
        try
        {
            open.Settle(around);
            return open;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            open.Dispose();
            throw;
        }
    }

    /// <summary>Settles what a command was cut short in, for one that only reads; touches nothing where there is no such thing.</summary>
    public static void Settle(string folder, string command, CommandEnvironment around)
    {
        if (File.Exists(InHidden(folder, JournalName)))
        {
            Open(folder, command, around).Dispose();
            return;
        }

        TryTo(() =>
        {
            if (Strays(folder, around.Disk).Count > 0)
            {
                Open(folder, command, around).Dispose();
            }
        });
    }

    /// <summary>The same for a production and for the folders in it that Spoolbook writes.</summary>
    public static void SettleProduction(string path, string command, CommandEnvironment around)
    {
        var folder = OfProduction(path, around);
        foreach (var inside in (string[])["", PapersName, SchemasName])
        {
            Settle(Path.Combine(folder, inside), command, around);
        }
    }

    /// <summary>Whether this process may write here, or only sees what would be written.</summary>
    public bool IsLookedAt => _isLookedAt;

    /// <summary>
    /// Writes a file that is to go to a name later, and gives its path until then. It is on the disk when this returns; what is not
    /// put in place goes when the folder is given back, or with the next command after a kill.
    /// </summary>
    public string Stage(string name, ReadOnlySpan<byte> bytes)
    {
        var path = InHidden(Folder, Journal.NameStaged(_id, _staged++));
        var target = Path.Combine(Folder, name);
        using var file = _disk.Create(path, like: FileState.LinkTarget(target) is null ? target : "");
        _disk.Write(file, bytes);
        _disk.Flush([file]);
        return path;
    }

    /// <summary>Puts files in place or takes them away: all of them or none. What they were is kept if they are to be taken back.</summary>
    /// <exception cref="IOException">One is not as it was any more, or cannot be written. Nothing has changed then.</exception>
    public void Put(IReadOnlyList<FileChange> changes, bool isKept = false, string subject = "")
    {
        var now = FileState.OfAll([.. changes.Select(c => Path.Combine(Folder, c.Name))]);
        if (changes.Where((c, at) => now[at] != c.Before).FirstOrDefault() is { } other)
        {
            throw new IOException($"{Path.Combine(Folder, other.Name)} was changed by somebody else in the meantime.");
        }

        if (changes.Count == 0 || _isLookedAt)
        {
            return;
        }

        var id = Guid.NewGuid().ToString("N")[..12];
        var entries = changes.Select(
            (c, at) =>
                new JournalEntry(
                    c.Name,
                    c.IsRemoval ? "" : Journal.NameBeside(id, at),
                    c.Before,
                    c.After,
                    c.Before == FileState.Nothing ? "" : Journal.NameKept(id, at)
                )
        );
        var file = new JournalFile(Folder, new Journal(_command, subject, isKept, [.. entries]), _disk);
        try
        {
            file.Prepare(changes);
            file.Finish();
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            TryTo(file.Undo);
            TryTo(Sweep);
            throw;
        }

        // It is done, whatever becomes of the rest.
        TryTo(Sweep);
    }

    /// <summary>The last change that can be taken back; null where there is none.</summary>
    public JournalFile? Last() => Last(Folder, _disk);

    static JournalFile? Last(string folder, IFileWork disk) =>
        File.Exists(InHidden(folder, LastName)) ? JournalFile.Read(folder, InHidden(folder, LastName), disk) : null;

    /// <summary>Gives the folder back.</summary>
    public void Dispose()
    {
        if (_staged > 0 && _lock is not null)
        {
            TryTo(Sweep);
        }

        _lock?.Dispose();
        _lock = null;
        if (!_isLookedAt)
        {
            TryTo(DeleteEmpty);
        }
    }

    void Settle(CommandEnvironment around)
    {
        var path = InHidden(Folder, JournalName);
        if (File.Exists(path))
        {
            if (JournalFile.Read(Folder, path, _disk) is { Journal.Entries.Length: > 0 } cut)
            {
                around.Error.WriteLine(Settle(cut));
            }
            else
            {
                _disk.Delete(path);
            }
        }

        Sweep();
    }

    string Settle(JournalFile cut)
    {
        var what = $"spoolbook: '{Plain.Text(cut.Journal.Command)}' was cut short in {Folder}";
        var files = Plain.Text(cut.Journal.Files());
        if (cut.CanFinish)
        {
            cut.Finish();
            return $"{what}, and is finished now: {files}.";
        }

        cut.Undo();
        return $"{what}, and is undone now: {files} as before.";
    }

    void Sweep()
    {
        foreach (var stray in Strays(Folder, _disk))
        {
            _disk.Delete(InHidden(Folder, stray));
        }

        _disk.SyncFolder(InHidden(Folder, ""));
    }

    // What is kept and no journal names any more, and what waited for others that were never made.
    static List<string> Strays(string folder, IFileWork disk)
    {
        var hidden = InHidden(folder, "");
        if (!Directory.Exists(hidden) || File.Exists(InHidden(folder, JournalName)))
        {
            return [];
        }

        var named = Last(folder, disk)?.Journal.Entries.Select(e => e.Kept).ToHashSet() ?? [];
        var names = Directory.EnumerateFileSystemEntries(hidden).Select(p => Path.GetFileName(p));
        return [.. names.Where(name => Journal.IsNameStaged(name) || (Journal.IsNameKept(name) && !named.Contains(name)))];
    }

    void DeleteEmpty()
    {
        var hidden = InHidden(Folder, "");
        if (Directory.Exists(hidden) && !Directory.EnumerateFileSystemEntries(hidden).Any())
        {
            _disk.DeleteFolder(hidden);
        }

        if (_isNew && !Directory.EnumerateFileSystemEntries(Folder).Any())
        {
            _disk.DeleteFolder(Folder);
        }
    }

    static void TryTo(Action work)
    {
        try
        {
            work();
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // The next command that opens the folder does it.
        }
    }
}
