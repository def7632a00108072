using Spoolbook.Papers;

namespace Spoolbook.Writing;

/// <summary>Puts papers into their folder: whole or not at all, and only those that changed.</summary>
internal static class PaperFolder
{
    public static IReadOnlyList<(string Name, WriteResult What)> Put(string folder, IReadOnlyList<PaperFile> files)
    {
        Directory.CreateDirectory(folder);
        var states = new List<(string, WriteResult)>(files.Count);
        var waiting = new List<(string From, string To)>();
        try
        {
            foreach (var file in files)
            {
                var path = Path.Combine(folder, file.Name);
                var state = !File.Exists(path) ? WriteResult.New : Same(path, file.Bytes.AsSpan()) ? WriteResult.Same : WriteResult.Changed;
                states.Add((file.Name, state));
                if (state != WriteResult.Same)
                {
                    var beside = path + ".part";
                    waiting.Add((beside, path));
                    File.WriteAllBytes(beside, file.Bytes.AsSpan());
                }
            }

            // All of them are on the disk before the first one takes its place, so that a full disk loses nothing.
            foreach (var (from, to) in waiting)
            {
                File.Move(from, to, overwrite: true);
            }
        }
        finally
        {
            foreach (var (from, _) in waiting)
            {
                File.Delete(from);
            }
        }

        return states;
    }

    static bool Same(string path, ReadOnlySpan<byte> bytes) => new FileInfo(path).Length == bytes.Length && File.ReadAllBytes(path).AsSpan().SequenceEqual(bytes);
}
