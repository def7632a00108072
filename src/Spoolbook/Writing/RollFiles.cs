using System.Text;
using Spoolbook.Entry;
using Spoolbook.Reading.Files;

namespace Spoolbook.Writing;

/// <summary>Puts new texts in the place of a production's files, all of them or none, and takes the last ones back.</summary>
internal static class RollFiles
{
    /// <summary>What an import writes in its journal, and its undoing does not.</summary>
    public const string ImportName = "import";

    /// <summary>What a line of the log writes in its journal, and its undoing does not.</summary>
    public const string LogName = "log";

    /// <param name="source">Where the texts come from, for whoever wants them taken back: a table, a line.</param>
    /// <exception cref="IOException">A file is not as it was read any more, or cannot be written; nothing has changed then.</exception>
    public static void Put(WorkFolder work, IEnumerable<ChangedFile> files, string source) =>
        work.Put([.. files.Where(f => f.Before != f.After).Select(f => Change(work.Folder, f))], isKept: true, source);

    /// <summary>Why the last change cannot be taken back; null where it can.</summary>
    /// <param name="command">The command that made it.</param>
    /// <param name="called">What it is called: "the import of takes.csv".</param>
    public static string? KeepsFromUndoing(WorkFolder work, string command, Func<string, string> called)
    {
        if (work.Last() is not { Journal: var last } || last.Command != command)
        {
            return $"There is no {command} to take back in {work.Folder}.";
        }

        var changed = last.Entries.FirstOrDefault(e => FileState.Of(Path.Combine(work.Folder, e.Name)) != e.New);
        return changed is null
            ? null
            : $"{changed.Name} was changed since {called(last.Subject)}, and that would be lost. Nothing was taken back: the files "
                + $"as they were before the {command} are in {WorkFolder.InHidden(work.Folder, "")}.";
    }

    /// <summary>Takes the last change back; where its texts came from, and the files that are as before.</summary>
    public static (string Source, IReadOnlyList<string> Files) Undo(WorkFolder work)
    {
        var last = work.Last()!.Journal;
        var back = last.Entries.Select(e => new FileChange(e.Name, BytesBefore(work, e), e.New));
        // Its journal takes the place of the other, so that nobody takes back the same one twice.
        work.Put([.. back], isKept: true, last.Subject);
        return (last.Subject, [.. last.Entries.Select(e => e.Name)]);
    }

    // A file that was not there before goes.
    static byte[]? BytesBefore(WorkFolder work, JournalEntry entry) =>
        entry.Kept.Length == 0 ? null : FileState.Bytes(WorkFolder.InHidden(work.Folder, entry.Kept));

    static FileChange Change(string folder, ChangedFile file)
    {
        var path = RealPath.Of(Path.Combine(folder, file.Name));
        var name = Path.GetRelativePath(RealPath.Of(folder), path).Replace(Path.DirectorySeparatorChar, '/');
        if (!JournalFile.LeadsDown(name))
        {
            throw new IOException($"{file.Name} is a link that leads out of the production to {path}: Spoolbook does not write there.");
        }

        if (file.Before is null)
        {
            return new FileChange(name, Encoding.UTF8.GetBytes(file.After!), FileState.Nothing);
        }

        var old = FileState.Bytes(path);
        var mark = old.AsSpan().StartsWith(Encoding.UTF8.Preamble) ? Encoding.UTF8.Preamble : [];
        return Encoding.UTF8.GetString(old.AsSpan(mark.Length)) == file.Before
            ? new FileChange(name, file.After is { } text ? [.. mark, .. Encoding.UTF8.GetBytes(text)] : null, FileState.Of(old))
            : throw new IOException($"{path} was changed by somebody else in the meantime.");
    }
}
