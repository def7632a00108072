using System.Buffers;
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
        : !File.Exists(path) ? Nothing
        : new FileInfo(path).Length == 0 ? Of([])
        : InPieces(path);

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

    // Whole, the papers of a term would be a gigabyte of memory that nobody looks at twice.
    static string InPieces(string path)
    {
        using var file = File.OpenRead(path);
        var piece = ArrayPool<byte>.Shared.Rent(1 << 16);
        try
        {
            var digest = new Sha256();
            while (file.Read(piece) is > 0 and var read)
            {
                digest.Add(piece.AsSpan(0, read));
            }

            return Convert.ToHexStringLower(digest.Finish());
        }
        finally
        {
            ArrayPool<byte>.Shared.Return(piece);
        }
    }

    /// <summary>Where a link points; null where there is none.</summary>
    public static string? LinkTarget(string path) => new FileInfo(path).LinkTarget;

    // A pipe has no length either, and to open it is to wait for whoever fills it.
    public static byte[] Bytes(string path) => new FileInfo(path).Length == 0 ? [] : File.ReadAllBytes(path);
}
