using System.Runtime.ExceptionServices;
using Spoolbook.Digests;

namespace Spoolbook.Writing;

/// <summary>What is at a path, in a word that can be written down and compared: a digest, or what else it is.</summary>
internal static class FileState
{
    public const string Nothing = "-";

    public const string Link = "link";

    /// <summary>What is there. A link is a link, wherever it points.</summary>
    public static string Of(string path) =>
        LinkTarget(path) is not null ? Link
        : File.Exists(path) ? Of(Bytes(path))
        : Nothing;

    /// <summary>What is at each of some paths, in their order.</summary>
    public static string[] OfAll(IReadOnlyList<string> paths)
    {
        var states = new string[paths.Count];
        try
        {
            Parallel.For(0, paths.Count, i => states[i] = Of(paths[i]));
        }
        catch (AggregateException several)
        {
            ExceptionDispatchInfo.Throw(several.Flatten().InnerExceptions[0]);
        }

        return states;
    }

    public static string Of(ReadOnlySpan<byte> bytes) => Sha256.TextOf(bytes);

    /// <summary>Where a link points; null where there is none.</summary>
    public static string? LinkTarget(string path) => new FileInfo(path).LinkTarget;

    // A pipe has no length either, and to open it is to wait for whoever fills it.
    public static byte[] Bytes(string path) => new FileInfo(path).Length == 0 ? [] : File.ReadAllBytes(path);
}
