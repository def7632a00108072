using Spoolbook.Papers;

namespace Spoolbook.Writing;

/// <summary>Writes papers into their folder: all or none, and only those that changed.</summary>
internal static class PaperFolder
{
    public static IReadOnlyList<(string Name, WriteResult What)> Put(string folder, IReadOnlyList<PaperFile> files)
    {
        Directory.CreateDirectory(folder);
        var states = new List<(string, WriteResult)>(files.Count);
        var waiting = new List<StagedFile>();
        try
        {
            foreach (var file in files)
            {
                var path = Path.Combine(folder, file.Name);
                var state =
                    !File.Exists(path) ? WriteResult.New
                    : Same(path, file.Bytes.AsSpan()) ? WriteResult.Same
                    : WriteResult.Changed;
                states.Add((file.Name, state));
                if (state != WriteResult.Same)
                {
                    waiting.Add(new StagedFile(path, file.Bytes.AsSpan()));
                }
            }

            // All of them are on the disk before the first one replaces its file, so that a full disk loses nothing.
            foreach (var file in waiting)
            {
                file.Put();
            }
        }
        finally
        {
            foreach (var file in waiting)
            {
                file.Dispose();
            }
        }

        return states;
    }

    static bool Same(string path, ReadOnlySpan<byte> bytes) =>
        new FileInfo(path).Length == bytes.Length && File.ReadAllBytes(path).AsSpan().SequenceEqual(bytes);
}
