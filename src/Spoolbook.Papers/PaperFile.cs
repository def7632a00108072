using System.Collections.Immutable;

namespace Spoolbook.Papers;

/// <summary>A file of the papers.</summary>
public sealed record PaperFile(string Name, ImmutableArray<byte> Bytes);
