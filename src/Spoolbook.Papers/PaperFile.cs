using System.Collections.Immutable;
using Spoolbook.Digests;

namespace Spoolbook.Papers;

/// <summary>A file of the papers.</summary>
public sealed record PaperFile(string Name, ImmutableArray<byte> Bytes)
{
    /// <summary>SHA-256 of the file, as <c>sha256sum</c> writes it; from the first, since papers are made several at a time.</summary>
    public string Digest { get; } = Sha256.TextOf(Bytes.AsSpan());
}
