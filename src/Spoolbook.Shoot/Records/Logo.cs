using System.Collections.Immutable;

namespace Spoolbook.Shoot.Records;

/// <summary>A logo's file.</summary>
/// <param name="File">Its path from the production's folder: a PNG or an SVG.</param>
/// <param name="Bytes">The contents of the file.</param>
public sealed record Logo(Located<string> File, ImmutableArray<byte> Bytes)
{
    /// <summary>Whether it is a vector drawing and not pixels.</summary>
    public bool IsSvg => File.Value.EndsWith(".svg", StringComparison.OrdinalIgnoreCase);
}
