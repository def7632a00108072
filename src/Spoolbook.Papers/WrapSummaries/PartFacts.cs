using System.Collections.Immutable;

namespace Spoolbook.Papers.WrapSummaries;

/// <summary>The use of film by one kind of part: by scene, by lot, by body.</summary>
/// <param name="SharesFilm">Whether takes of several parts may be on the same film.</param>
public sealed record PartFacts(string Heading, string Kind, ImmutableArray<PartLine> Lines, bool SharesFilm);
