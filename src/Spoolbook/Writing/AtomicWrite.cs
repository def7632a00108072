using System.Text;

namespace Spoolbook.Writing;

/// <summary>Replaces the texts of files: all of them or none. No file is missing at any moment.</summary>
internal static class AtomicWrite
{
    /// <param name="files">The path of each, its present text, and its new text.</param>
    /// <exception cref="IOException">A file has changed since it was read, or cannot be written. Nothing is changed.</exception>
    public static void Put(IReadOnlyList<(string Path, string Before, string After)> files)
    {
        var staged = new List<(string Path, byte[] Old, StagedFile New)>(files.Count);
        var put = new List<(string Path, byte[] Old)>(files.Count);
        try
        {
            foreach (var (path, before, after) in files)
            {
                var real = Real(path);
                var old = Unchanged(real, before);
                var mark = old.AsSpan().StartsWith(Encoding.UTF8.Preamble) ? Encoding.UTF8.Preamble : [];
                staged.Add((real, old, new StagedFile(real, [.. mark, .. Encoding.UTF8.GetBytes(after)])));
            }

            foreach (var (path, old, file) in staged)
            {
                file.Put();
                put.Add((path, old));
            }
        }
        catch
        {
            foreach (var (path, old) in put)
            {
                using var back = new StagedFile(path, old);
                back.Put();
            }

            throw;
        }
        finally
        {
            foreach (var (_, _, file) in staged)
            {
                file.Dispose();
            }
        }
    }

    static byte[] Unchanged(string path, string before)
    {
        var bytes = File.ReadAllBytes(path);
        var mark = bytes.AsSpan().StartsWith(Encoding.UTF8.Preamble) ? Encoding.UTF8.Preamble.Length : 0;
        return Encoding.UTF8.GetString(bytes.AsSpan(mark)) == before
            ? bytes
            : throw new IOException($"{path} was changed by somebody else in the meantime.");
    }

    // Writes to the target of a link, which stays a link.
    static string Real(string path) => File.ResolveLinkTarget(path, returnFinalTarget: true)?.FullName ?? path;
}
