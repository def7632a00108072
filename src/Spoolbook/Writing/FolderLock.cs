using System.Diagnostics;
using System.Globalization;
using System.Text;
using Spoolbook.Printing;

namespace Spoolbook.Writing;

/// <summary>
/// The right to write in a folder, which one process has at a time. The open file is the lock, so that a kill gives it back; what the
/// file says is who holds it. It is taken away with the lock: whoever opened it just before finds out and asks again. Those who wait
/// get it in the order in which they came.
/// </summary>
internal sealed class FolderLock : IDisposable
{
    // Milliseconds: whoever is next looks often.
    const int Pause = 5,
        LongestPause = 40,
        LongestHolder = 200;

    readonly string _path;
    readonly FileStream _file;
    readonly IFileWork _disk;

    FolderLock(string path, FileStream file, IFileWork disk) => (_path, _file, _disk) = (path, file, disk);

    /// <param name="hidden">The folder for the file; it is made if it is not there.</param>
    /// <param name="command">What this process does, for others who want to.</param>
    /// <param name="patience">How long to wait for another process; anew each time that a turn is over.</param>
    /// <exception cref="FolderBusyException">Another process kept it for longer than that.</exception>
    public static FolderLock Take(string hidden, string command, IFileWork disk, TimeSpan patience)
    {
        var path = Path.Combine(hidden, "lock");
        if (!LockQueue.HasAny(hidden) && Try(path, command, disk) is { } free)
        {
            return free;
        }

        using var turn = LockQueue.Join(hidden, disk);
        var (ahead, waited) = (int.MaxValue, Stopwatch.StartNew());
        do
        {
            var before = turn.Ahead();
            if (before == 0 && Try(path, command, disk) is { } taken)
            {
                return taken;
            }

            if (before < ahead)
            {
                (ahead, waited) = (before, Stopwatch.StartNew());
            }

            Thread.Sleep(Math.Min(LongestPause, Pause * (before + 1)));
        } while (waited.Elapsed < patience);

        throw new FolderBusyException(
            $"{Path.GetDirectoryName(hidden)} is being written by {Holder(path)}. Nothing was changed: try again when that is done."
        );
    }

    static FolderLock? Try(string path, string command, IFileWork disk)
    {
        FileStream? file;
        try
        {
            disk.MakeFolder(Path.GetDirectoryName(path)!);
            file = disk.Lock(path);
        }
        catch (DirectoryNotFoundException)
        {
            return null;
        }

        if (file is null)
        {
            return null;
        }

        try
        {
            var holder = string.Create(
                CultureInfo.InvariantCulture,
                $"process {Environment.ProcessId} (spoolbook {command}) since {DateTime.Now:yyyy-MM-dd HH:mm:ss}, {Guid.NewGuid():N}"
            );
            file.SetLength(0);
            disk.Write(file, Encoding.UTF8.GetBytes(holder));
            if (File.Exists(path) && FileWork.TextOfHeld(path) == holder)
            {
                return new FolderLock(path, file, disk);
            }
        }
        catch (FileNotFoundException)
        {
            // It was taken away between the two looks.
        }
        catch
        {
            file.Dispose();
            throw;
        }

        file.Dispose();
        return null;
    }

    /// <summary>Gives the lock back.</summary>
    public void Dispose()
    {
        try
        {
            _disk.Delete(_path);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // The file stays, as on Windows, where an open one cannot be deleted. The lock is given back all the same.
        }

        _file.Dispose();
    }

    static string Holder(string path)
    {
        try
        {
            var said = Plain.Text(FileWork.TextOfHeld(path).Split(',')[0]).Trim();
            return said.Length is 0 or > LongestHolder ? "another process" : said;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return "another process";
        }
    }
}
