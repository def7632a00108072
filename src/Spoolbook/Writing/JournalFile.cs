using System.Text;
using Spoolbook.Reading.Files;

namespace Spoolbook.Writing;

/// <summary>
/// A journal where it lies, in a hidden folder of the folder that it is about. Every step asks what is there before it does anything,
/// so that it can be cut short and done again any number of times.
/// </summary>
internal sealed class JournalFile(string folder, Journal journal, IFileWork disk)
{
    // A process may have some hundreds of files open, and a change keeps up to two of each.
    const int AtOnce = 100;

    readonly string _root = RealPath.Of(folder);
    bool _isReady = journal.IsReady;

    public Journal Journal => journal;

    /// <summary>Reads the one that lies there; null where it says nothing yet.</summary>
    /// <exception cref="IOException">It names files that are none of Spoolbook's business.</exception>
    public static JournalFile? Read(string folder, string path, IFileWork disk)
    {
        if (Journal.Parse(Encoding.UTF8.GetString(FileState.Bytes(path))) is not { } journal)
        {
            return null;
        }

        var file = new JournalFile(folder, journal, disk);
        return journal.IsOurs() && journal.Entries.All(e => file.IsInside(e.Name))
            ? file
            : throw new IOException($"{path} names files that Spoolbook does not write. Delete it, and see where it comes from.");
    }

    /// <summary>Puts every file in its place, and closes the journal.</summary>
    public void Finish()
    {
        foreach (var entry in journal.Entries)
        {
            if (entry.Beside.Length > 0 && File.Exists(Beside(entry)))
            {
                disk.Rename(Beside(entry), Target(entry));
            }
            else if (entry.Beside.Length == 0 && State(entry) == entry.Old)
            {
                disk.Delete(Target(entry));
            }
        }

        SyncFolders();
        if (journal.IsKept)
        {
            disk.Rename(WorkFolder.InHidden(folder, WorkFolder.JournalName), WorkFolder.InHidden(folder, WorkFolder.LastName));
        }
        else
        {
            disk.Delete(WorkFolder.InHidden(folder, WorkFolder.JournalName));
        }
    }

    /// <summary>
    /// Whether every file can be put in its place, or is in it. One that a person has changed since the new file took its place is as
    /// good as the new file.
    /// </summary>
    public bool CanFinish =>
        _isReady
        && journal.Entries.All(e =>
            e.Beside.Length == 0 || !File.Exists(Beside(e))
                ? State(e) != e.Old || e.Beside.Length == 0
                : State(e) == e.Old && FileState.Of(Beside(e)) == e.New
        );

    /// <summary>Takes every file back, clears the new ones away, and closes the journal.</summary>
    public void Undo()
    {
        foreach (var entry in journal.Entries.Where(e => _isReady && State(e) == e.New && e.New != e.Old))
        {
            if (entry.Old == FileState.Nothing)
            {
                disk.Delete(Target(entry));
                continue;
            }

            if (FileState.Of(Kept(entry)) != entry.Old)
            {
                throw new IOException(
                    $"{Target(entry)} cannot be taken back: what was there is not in {Kept(entry)} any more. See to that file, and delete "
                        + $"{WorkFolder.InHidden(folder, WorkFolder.JournalName)}."
                );
            }

            disk.Rename(Kept(entry), Target(entry));
        }

        SyncFolders();
        foreach (var entry in journal.Entries.Where(e => e.Beside.Length > 0))
        {
            disk.Delete(Beside(entry));
        }

        disk.Delete(WorkFolder.InHidden(folder, WorkFolder.JournalName));
    }

    /// <summary>Writes the journal, the new files beside the old ones, and what is kept of these; then that it is ready.</summary>
    public void Prepare(IReadOnlyList<FileChange> changes)
    {
        var path = WorkFolder.InHidden(folder, WorkFolder.JournalName);
        using var file = disk.Create(path, like: "");
        disk.Write(file, Encoding.UTF8.GetBytes(journal.Text()));
        disk.Flush([file]);
        disk.SyncFolder(WorkFolder.InHidden(folder, ""));
        foreach (var some in journal.Entries.Zip(changes).Chunk(AtOnce))
        {
            WriteNew(some);
        }

        SyncFolders();
        disk.Write(file, Encoding.UTF8.GetBytes(Journal.ReadyLine));
        disk.Flush([file]);
        _isReady = true;
    }

    // Each file stays open until all of them are on the disk.
    void WriteNew(IEnumerable<(JournalEntry Entry, FileChange Change)> some)
    {
        var written = new List<FileStream>();
        try
        {
            foreach (var (entry, change) in some)
            {
                if (!change.IsRemoval)
                {
                    MakeFolder(Path.GetDirectoryName(Target(entry))!);
                }

                if (change.Staged is { } staged)
                {
                    disk.Rename(staged, Beside(entry));
                }
                else if (change.Bytes is { } bytes)
                {
                    Write(Beside(entry), bytes, like: entry.Old == FileState.Link ? "" : Target(entry));
                }

                if (entry.Old == FileState.Link)
                {
                    disk.Link(Kept(entry), FileState.LinkTarget(Target(entry))!);
                }
                else if (entry.Kept.Length > 0)
                {
                    Write(Kept(entry), FileState.Bytes(Target(entry)), like: Target(entry));
                }
            }

            disk.Flush(written);
        }
        finally
        {
            written.ForEach(file => file.Dispose());
        }

        void Write(string path, byte[] bytes, string like)
        {
            written.Add(disk.Create(path, like));
            disk.Write(written[^1], bytes);
        }
    }

    // The first roll of a production makes the folder of its rolls.
    void MakeFolder(string path)
    {
        if (!Directory.Exists(path))
        {
            disk.MakeFolder(path);
        }
    }

    void SyncFolders()
    {
        foreach (
            var changed in journal.Entries.Select(e => Path.GetDirectoryName(Target(e))!).Append(WorkFolder.InHidden(folder, "")).Distinct()
        )
        {
            // Cut short before a new folder was made, there is nothing in it to sync.
            if (Directory.Exists(changed))
            {
                disk.SyncFolder(changed);
            }
        }
    }

    /// <summary>Whether a path leads down from the folder it starts in.</summary>
    public static bool LeadsDown(string name) =>
        !Path.IsPathRooted(name) && name.Split('/', Path.DirectorySeparatorChar).All(step => step is not ("" or "." or ".."));

    bool IsInside(string name) =>
        LeadsDown(name)
        && (RealPath.Of(Path.GetDirectoryName(Path.Combine(_root, name))!) + Path.DirectorySeparatorChar).StartsWith(
            _root.TrimEnd(Path.DirectorySeparatorChar) + Path.DirectorySeparatorChar,
            StringComparison.Ordinal
        );

    string State(JournalEntry entry) => FileState.Of(Target(entry));

    string Target(JournalEntry entry) => Path.Combine(_root, entry.Name);

    string Beside(JournalEntry entry) => Path.Combine(Path.GetDirectoryName(Target(entry))!, entry.Beside);

    string Kept(JournalEntry entry) => WorkFolder.InHidden(folder, entry.Kept);
}
