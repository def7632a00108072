using Spoolbook.Writing;

namespace Spoolbook.Acceptance.Writing;

/// <summary>Does the work on files, counts the operations, and lets one of them go wrong.</summary>
sealed class FaultyDisk(Fault fault = Fault.None, int at = -1) : IFileWork
{
    readonly List<FileStream> _open = [];
    readonly List<string> _done = [];

    /// <summary>What was done, in order: the operation, and the name of the file or folder.</summary>
    public IReadOnlyList<string> Done => _done;

    public bool IsDead { get; private set; }

    public FileStream? Lock(string path)
    {
        Step("lock", path);
        return Opened(FileWork.OfThisMachine.Lock(path));
    }

    public void MakeFolder(string path) => Do("make folder", path, () => FileWork.OfThisMachine.MakeFolder(path));

    public FileStream Create(string path, string like)
    {
        Step("create", path);
        return Opened(FileWork.OfThisMachine.Create(path, like))!;
    }

    public void Link(string path, string target) => Do("link", path, () => FileWork.OfThisMachine.Link(path, target));

    public void Write(FileStream file, ReadOnlySpan<byte> bytes)
    {
        var isNext = _done.Count == at && !IsDead;
        if (isNext && fault != Fault.None)
        {
            // Half of it reaches the disk.
            file.Write(bytes[..(bytes.Length / 2)]);
        }

        Step("write", file.Name);
        file.Write(bytes);
    }

    // A killed process loses nothing that it has written, so the tests need not wait for the disk.
    public void Flush(IReadOnlyList<FileStream> files)
    {
        foreach (var file in files)
        {
            Step("flush", file.Name);
        }
    }

    public void Rename(string from, string to) => Do("rename", to, () => FileWork.OfThisMachine.Rename(from, to));

    public void Delete(string path) => Do("delete", path, () => FileWork.OfThisMachine.Delete(path));

    public void DeleteFolder(string path) => Do("delete folder", path, () => FileWork.OfThisMachine.DeleteFolder(path));

    public void SyncFolder(string path) => Step("sync", path);

    void Do(string what, string path, Action work)
    {
        Step(what, path);
        work();
    }

    void Step(string what, string path)
    {
        if (IsDead)
        {
            throw new ProcessKilledException();
        }

        var number = _done.Count;
        _done.Add($"{what} {Path.GetFileName(path)}");
        switch (fault)
        {
            case Fault.Killed when number == at:
                IsDead = true;
                // The system closes the files of a process that it kills.
                _open.ForEach(file => file.Dispose());
                throw new ProcessKilledException();
            case Fault.Failed when number == at:
            case Fault.Failing when number >= at:
                throw new IOException($"No luck with {path}.");
        }
    }

    FileStream? Opened(FileStream? file)
    {
        if (file is not null)
        {
            _open.Add(file);
        }

        return file;
    }
}
