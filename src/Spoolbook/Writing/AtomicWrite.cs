using System.Text;

namespace Spoolbook.Writing;

/// <summary>Puts new texts in the place of files: all of them or none.</summary>
internal static class AtomicWrite
{
    const string New = ".part";
    const string Old = ".before";

    /// <param name="files">Where each lies, what stands there, and what is to stand there.</param>
    /// <exception cref="IOException">A file is not as it was read any more, or cannot be written; nothing has changed then.</exception>
    public static void Put(IReadOnlyList<(string Path, string Before, string After)> files)
    {
        var work = files.Select(f => (Path: Real(f.Path), f.Before, f.After)).ToList();
        var moved = new List<string>();
        try
        {
            foreach (var (path, before, after) in work)
            {
                WriteBeside(path, before, after);
            }

            foreach (var (path, _, _) in work)
            {
                File.Move(path, path + Old, overwrite: true);
                moved.Add(path);
                File.Move(path + New, path);
            }
        }
        catch
        {
            foreach (var path in moved)
            {
                File.Move(path + Old, path, overwrite: true);
            }

            throw;
        }
        finally
        {
            foreach (var (path, _, _) in work)
            {
                File.Delete(path + New);
            }
        }

        foreach (var path in moved)
        {
            File.Delete(path + Old);
        }
    }

    static void WriteBeside(string path, string before, string after)
    {
        var bytes = File.ReadAllBytes(path);
        var mark = bytes.AsSpan().StartsWith(Encoding.UTF8.Preamble) ? Encoding.UTF8.Preamble.Length : 0;
        if (Encoding.UTF8.GetString(bytes.AsSpan(mark)) != before)
        {
            throw new IOException($"{path} was changed by somebody else in the meantime.");
        }

        File.WriteAllBytes(path + New, [.. bytes.AsSpan(0, mark), .. Encoding.UTF8.GetBytes(after)]);
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(path + New, File.GetUnixFileMode(path));
        }
    }

    // A link stays a link: what it points to is written.
    static string Real(string path) => File.ResolveLinkTarget(path, returnFinalTarget: true)?.FullName ?? path;
}
