using System.Collections.Immutable;
using Spoolbook.Reading.Editing;

namespace Spoolbook.Entry.Lines;

/// <summary>How one thing that happens is said.</summary>
/// <param name="Words">The verb, by word: <c>run off</c> is two.</param>
/// <param name="Table">The keys of the entry, each of which can be said by its name.</param>
/// <param name="Forms">The tokens that are known by their form.</param>
sealed record VerbGrammar(LineVerb Verb, ImmutableArray<string> Words, EntryTable Table, ImmutableArray<FormRule> Forms)
{
    /// <summary>Other words for a key's name.</summary>
    public ImmutableArray<(string Word, string Key)> Aliases { get; init; } = [];

    /// <summary>Whether keys may be missing: an amendment names only what changes.</summary>
    public bool IsPart { get; init; }

    /// <summary>The verb as it is said.</summary>
    public string Word => string.Join(' ', Words);

    /// <summary>The names that can be said, each as its words, the longest first.</summary>
    public ImmutableArray<(ImmutableArray<string> Words, EntryKey Key)> Names { get; private init; } = [];

    /// <summary>The same with the names of the keys gathered.</summary>
    public VerbGrammar Gathered()
    {
        var names = ImmutableArray.CreateBuilder<(ImmutableArray<string> Words, EntryKey Key)>();
        foreach (var key in Table.Keys)
        {
            names.Add(([key.Name], key));
            if (key.Name.Contains('-', StringComparison.Ordinal))
            {
                names.Add(([.. key.Name.Split('-')], key));
            }
        }

        foreach (var (word, key) in Aliases)
        {
            names.Add(([word], Table.Find(key)!));
        }

        names.Sort((one, other) => other.Words.Length.CompareTo(one.Words.Length));
        return this with { Names = names.ToImmutable() };
    }
}
