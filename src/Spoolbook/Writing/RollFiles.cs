using System.Text;
using Spoolbook.Entry;
using Spoolbook.Reading.Files;

namespace Spoolbook.Writing;

/// <summary>Puts new texts in the place of a production's files, all of them or none, and takes the last ones back.</summary>
internal static class RollFiles
{
    /// <summary>What an import writes in its journal, and its undoing does not.</summary>
    public const string ImportName = "import";

    /// <param name="table">Where the texts come from, for whoever wants them taken back.</param>
    /// <exception cref="IOException">A file is not as it was read any more, or cannot be written; nothing has changed then.</exception>
    public static void Put(WorkFolder work, IEnumerable<ChangedFile> files, string table) =>
        work.Put([.. files.Where(f => f.Before != f.After).Select(f => Change(work.Folder, f))], isKept: true, table);

    /// <summary>Why the last import cannot be taken back; null where it can.</summary>
    public static string? KeepsFromUndoing(WorkFolder work)
    {
        if (work.Last() is not { Journal: { Command: ImportName } last })
        {
            return $"There is no import to take back in {work.Folder}.";
        }

        var changed = last.Entries.FirstOrDefault(e => FileState.Of(Path.Combine(work.Folder, e.Name)) != e.New);
        return changed is null
            ? null
            : $"{changed.Name} was changed since the import of {last.Subject}, and that would be lost. Nothing was taken back: the files "
                + $"as they were before the import are in {WorkFolder.InHidden(work.Folder, "")}.";
    }

    /// <summary>Takes the last import back; the table that it took in, and the files that are as before.</summary>
    public static (string Table, IReadOnlyList<string> Files) Undo(WorkFolder work)
    {
        var last = work.Last()!.Journal;
        var back = last.Entries.Select(e => new FileChange(e.Name, FileState.Bytes(WorkFolder.InHidden(work.Folder, e.Kept)), e.New));
        // Its journal takes the place of the import's, so that nobody takes back the same one twice.
        work.Put([.. back], isKept: true, last.Subject);
        return (last.Subject, [.. last.Entries.Select(e => e.Name)]);
    }

    static FileChange Change(string folder, ChangedFile file)
    {
        var path = RealPath.Of(Path.Combine(folder, file.Name));
        var name = Path.GetRelativePath(RealPath.Of(folder), path).Replace(Path.DirectorySeparatorChar, '/');
        if (!JournalFile.LeadsDown(name))
        {
            throw new IOException($"{file.Name} is a link that leads out of the production to {path}: Spoolbook does not write there.");
        }

        var old = FileState.Bytes(path);
        var mark = old.AsSpan().StartsWith(Encoding.UTF8.Preamble) ? Encoding.UTF8.Preamble : [];
        return Encoding.UTF8.GetString(old.AsSpan(mark.Length)) == file.Before
            ? new FileChange(name, [.. mark, .. Encoding.UTF8.GetBytes(file.After)], FileState.Of(old))
            : throw new IOException($"{path} was changed by somebody else in the meantime.");
    }
}
