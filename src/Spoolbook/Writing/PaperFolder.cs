using System.Runtime.InteropServices;
using Spoolbook.Papers;

namespace Spoolbook.Writing;

/// <summary>
/// Puts papers into their folder, whole or not at all, and only those that changed. What Spoolbook wrote and no longer makes goes;
/// what a person put there or changed by hand stays, if need be under another name, and is named.
/// </summary>
internal sealed class PaperFolder(WorkFolder work)
{
    readonly IReadOnlyDictionary<string, string> _ours = PaperManifest.Read(work.Folder);
    readonly List<FileChange> _changes = [];
    readonly List<(string Name, WriteResult What)> _results = [];
    readonly List<string> _notes = [];

    /// <summary>The papers, where each that Spoolbook wrote is still as it wrote it; null where one is not, or there are none.</summary>
    public WrittenPapers? Untouched() =>
        _ours.Count > 0 && FileState.OfAll([.. _ours.Keys.Select(name => Path.Combine(work.Folder, name))]).SequenceEqual(_ours.Values)
            ? new WrittenPapers(work.Folder, [.. _ours.Keys.Select(name => (name, WriteResult.Same))])
            : null;

    /// <param name="files">The papers.</param>
    /// <param name="origin">What they were made from; null where another printing may say something else of them.</param>
    /// <param name="isPart">Whether only some papers were printed, so that the others stay.</param>
    public WrittenPapers Put(IReadOnlyList<PaperFile> files, PaperOrigin? origin = null, bool isPart = false)
    {
        var before = FileState.OfAll([.. files.Select(f => Path.Combine(work.Folder, f.Name))]);
        foreach (var (at, file) in files.Index())
        {
            Put(file, before[at]);
        }

        var others = _ours.Where(paper => files.All(f => f.Name != paper.Key)).OrderBy(p => p.Key, StringComparer.Ordinal).ToList();
        if (!isPart)
        {
            others.ForEach(paper => Remove(paper.Key));
            others.Clear();
        }

        Note(PaperManifest.Name, PaperManifest.Write(files.Select(f => (f.Name, f.Digest)).Concat(others.Select(o => (o.Key, o.Value)))));
        // The others may be of an earlier day: what all of them were made from is not known then.
        Note(PaperOrigin.Name, isPart ? null : origin?.Write());
        work.Put(_changes);
        return new WrittenPapers(work.Folder, _results) { Notes = _notes };
    }

    void Note(string name, byte[]? bytes)
    {
        var before = FileState.Of(Path.Combine(work.Folder, name));
        if (before != (bytes is null ? FileState.Nothing : FileState.Of(bytes)))
        {
            _changes.Add(new FileChange(name, bytes, before));
        }
    }

    void Put(PaperFile file, string before)
    {
        var path = Path.Combine(work.Folder, file.Name);
        var bytes = file.Staged is null ? ImmutableCollectionsMarshal.AsArray(file.Bytes) : null;
        if (before == FileState.Link)
        {
            _notes.Add($"{file.Name} was a link to {FileState.LinkTarget(path)}: the paper took its place, and nothing was written there.");
        }
        else if (Directory.Exists(path))
        {
            throw new IOException($"{path} is a folder, and a paper of that name goes there. Move it away; nothing was changed.");
        }

        if (before == file.Digest)
        {
            _results.Add((file.Name, WriteResult.Same));
            return;
        }

        if (before is not (FileState.Nothing or FileState.Link) && _ours.GetValueOrDefault(file.Name) != before)
        {
            var aside = NameAside(file.Name);
            _changes.Add(new FileChange(aside, FileState.Bytes(path), FileState.Nothing));
            _notes.Add($"{file.Name} was not as Spoolbook wrote it: what was there is {aside} now.");
        }

        _changes.Add(new FileChange(file.Name, bytes, before) { After = file.Digest, Staged = file.Staged });
        _results.Add((file.Name, before == FileState.Nothing ? WriteResult.New : WriteResult.Changed));
    }

    void Remove(string name)
    {
        var before = FileState.Of(Path.Combine(work.Folder, name));
        if (before == _ours[name])
        {
            _changes.Add(new FileChange(name, null, before));
            _results.Add((name, WriteResult.Removed));
        }
        else if (before != FileState.Nothing)
        {
            _notes.Add($"{name} is no longer made, and is not as Spoolbook wrote it: it is still there.");
        }
    }

    string NameAside(string name)
    {
        var (stem, ending) = (Path.GetFileNameWithoutExtension(name), Path.GetExtension(name));
        return Enumerable
            .Range(1, int.MaxValue)
            .Select(n => $"{stem}.changed-by-hand{(n == 1 ? "" : $"-{n}")}{ending}")
            .First(aside =>
                !Path.Exists(Path.Combine(work.Folder, aside)) && FileState.LinkTarget(Path.Combine(work.Folder, aside)) is null
            );
    }
}
