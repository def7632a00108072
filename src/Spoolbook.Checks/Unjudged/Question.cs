using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Unjudged;

/// <summary>Something that checks judge where the record has a key.</summary>
/// <param name="Words">The key of its sentence; the part behind the dot is its name.</param>
/// <param name="Key">The key of the record.</param>
/// <param name="Count">So many of what it is about, in words.</param>
/// <param name="Open">Where the key is missing.</param>
sealed record Question(string Words, string Key, Func<long, Sentence> Count, Func<Production, IEnumerable<Place>> Open)
{
    public string Name => Words[(Words.IndexOf('.', StringComparison.Ordinal) + 1)..];
}
