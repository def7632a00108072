using System.Collections.Immutable;

namespace Spoolbook.Papers.KitLists;

/// <summary>Things of one kind.</summary>
public sealed record KitGroup(string Kind, ImmutableArray<KitLine> Lines);
