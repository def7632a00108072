using System.Collections.Immutable;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Findings;

/// <summary>Something that no check could judge, because the record does not have what it takes.</summary>
/// <param name="Question">What would have been judged, by a name that never changes: <c>exposure</c>.</param>
/// <param name="Description">What was not judged and what is missing: <c>exposure of 38 takes: no meter reading</c>.</param>
/// <param name="Key">The key of the record that gives it: <c>reading</c>.</param>
/// <param name="Places">Where it is missing, in the order of the record; at least one.</param>
public sealed record NotLookedAt(string Question, Sentence Description, string Key, ImmutableArray<Place> Places)
{
    /// <summary>What was not judged, in English.</summary>
    public string Message => Description.ToString();
}
