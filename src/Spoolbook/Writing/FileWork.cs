using System.Runtime.ExceptionServices;
using System.Runtime.InteropServices;
using System.Text;
using Microsoft.Win32.SafeHandles;

namespace Spoolbook.Writing;

/// <summary>Work on the files of this machine.</summary>
internal sealed class FileWork : IFileWork
{
    const int DiskFault = 5,
        DiskFull = 28;

    const int FlushesAtOnce = 15;

    public static FileWork OfThisMachine { get; } = new();

    public FileStream? Lock(string path)
    {
        if (new FileInfo(path).LinkTarget is not null)
        {
            File.Delete(path);
        }

        try
        {
            // Windows lets others read who holds it. Elsewhere the lock binds only those who ask for one, and reading does not.
            var share = OperatingSystem.IsWindows() ? FileShare.Read : FileShare.None;
            return new FileStream(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, share, bufferSize: 0);
        }
        catch (IOException held) when (held.HResult is unchecked((int)0x80070020) or 11 or 35)
        {
            return null;
        }
    }

    public void MakeFolder(string path) => Directory.CreateDirectory(path);

    public FileStream Create(string path, string like)
    {
        var file = new FileStream(path, FileMode.CreateNew, FileAccess.Write, FileShare.None, bufferSize: 0);
        if (!OperatingSystem.IsWindows() && File.Exists(like))
        {
            File.SetUnixFileMode(file.SafeFileHandle, File.GetUnixFileMode(like));
        }

        return file;
    }

    public void Link(string path, string target) => File.CreateSymbolicLink(path, target);

    public void Write(FileStream file, ReadOnlySpan<byte> bytes) => file.Write(bytes);

    // A disk brings many files home in about the time of one, if it is asked for them at once.
    public void Flush(IReadOnlyList<FileStream> files)
    {
        Exception? fault = null;
        var next = -1;
        var helpers = Enumerable.Range(1, Math.Clamp(files.Count - 1, 0, FlushesAtOnce)).Select(_ => new Thread(FlushSome)).ToList();
        helpers.ForEach(helper => helper.Start());
        FlushSome();
        helpers.ForEach(helper => helper.Join());
        if (fault is not null)
        {
            ExceptionDispatchInfo.Throw(fault);
        }

        void FlushSome()
        {
            try
            {
                for (var i = Interlocked.Increment(ref next); i < files.Count; i = Interlocked.Increment(ref next))
                {
                    files[i].Flush(flushToDisk: true);
                }
            }
            catch (Exception e) when (e is IOException or UnauthorizedAccessException)
            {
                Interlocked.CompareExchange(ref fault, e, null);
            }
        }
    }

    public void Rename(string from, string to) => File.Move(from, to, overwrite: true);

    public void Delete(string path)
    {
        try
        {
            File.Delete(path);
        }
        catch (DirectoryNotFoundException)
        {
            // Cut short before its folder was made, it is not there either.
        }
    }

    public void DeleteFolder(string path) => Directory.Delete(path);

    // Windows has no call for it: NTFS writes a rename to its own journal. A folder that may not be opened is passed over.
    public void SyncFolder(string path)
    {
        if (OperatingSystem.IsWindows() || Open([.. Encoding.UTF8.GetBytes(path), 0], 0) is var folder && folder < 0)
        {
            return;
        }

        var error = Sync(folder) == 0 ? 0 : Marshal.GetLastPInvokeError();
        _ = Close(folder);
        if (error is DiskFault or DiskFull)
        {
            throw new IOException($"{path} cannot be brought to the disk: error {error} of the system.");
        }
    }

    /// <summary>What a file says that another process may hold: read without asking for a lock, as .NET does by itself.</summary>
    public static string TextOfHeld(string path)
    {
        using var file = OperatingSystem.IsWindows()
            ? new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete)
            : new FileStream(new SafeFileHandle(OpenForReading(path), ownsHandle: true), FileAccess.Read, bufferSize: 0);
        using var reader = new StreamReader(file, Encoding.UTF8);
        return reader.ReadToEnd();
    }

    static int OpenForReading(string path) =>
        Open([.. Encoding.UTF8.GetBytes(path), 0], 0) is >= 0 and var file
            ? file
            : throw new FileNotFoundException($"{path} cannot be opened.", path);

    [DllImport("libc", EntryPoint = "open", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    static extern int Open(byte[] path, int flags);

    [DllImport("libc", EntryPoint = "fsync", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    static extern int Sync(int file);

    [DllImport("libc", EntryPoint = "close", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    static extern int Close(int file);
}
