using System.Collections.Immutable;
using Spoolbook.Digests;

namespace Spoolbook.Papers;

/// <summary>A file of the papers.</summary>
/// <param name="Bytes">What it says; nothing once it is laid down as a file (<see cref="Staged"/>).</param>
public sealed record PaperFile(string Name, ImmutableArray<byte> Bytes)
{
    /// <summary>SHA-256 of the file, as <c>sha256sum</c> writes it; from the first, since papers are made several at a time.</summary>
    public string Digest { get; } = Sha256.TextOf(Bytes.AsSpan());

    /// <summary>Where it lies until all papers are made; null where it is in memory.</summary>
    public string? Staged { get; init; }

    /// <summary>The same paper, out of memory and in a file.</summary>
    public PaperFile At(string path) => this with { Bytes = [], Staged = path };
}
