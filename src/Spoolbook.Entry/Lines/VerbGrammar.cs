using System.Collections.Immutable;
using Spoolbook.Reading.Editing;

namespace Spoolbook.Entry.Lines;

/// <summary>How a line says one kind of entry.</summary>
/// <param name="Words">The words of the verb: <c>run off</c> has two.</param>
/// <param name="Table">The keys of the entry; each can go by its name.</param>
/// <param name="Forms">The tokens known by their form.</param>
sealed record VerbGrammar(LineVerb Verb, ImmutableArray<string> Words, EntryTable Table, ImmutableArray<FormRule> Forms)
{
    public ImmutableArray<(string Word, string Key)> Aliases { get; init; } = [];

    /// <summary>Whether keys can be missing: an amendment names only what changes.</summary>
    public bool IsPart { get; init; }

    /// <summary>Words that may come before a key's name, and say no more than it does: <c>totals good 45</c>.</summary>
    public ImmutableArray<string> Openers { get; init; } = [];

    /// <summary>Whether words that are no token can be the remark.</summary>
    public bool HasRemark => Table.Find("note") is not null;

    public string Word => string.Join(' ', Words);

    /// <summary>The names of keys, each as its words, the longest first.</summary>
    public ImmutableArray<(ImmutableArray<string> Words, EntryKey Key)> Names { get; private init; } = [];

    /// <summary>The same grammar with its names filled in.</summary>
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
