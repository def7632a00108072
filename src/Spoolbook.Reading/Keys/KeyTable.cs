using System.Collections.Immutable;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Reading.Keys;

/// <summary>The keys of one kind of map.</summary>
/// <param name="Owner">The kind, as messages call it: <c>a lot</c>.</param>
sealed record KeyTable(Sentence Owner, ImmutableArray<Key> Keys)
{
    /// <summary>Keys of which a map needs exactly one.</summary>
    public ImmutableArray<Key> Either { get; init; } = [];

    /// <summary>Pairs of keys that say the same in two ways: a map has one of them at most.</summary>
    public ImmutableArray<(Key One, Key Other)> NotBoth { get; init; } = [];

    /// <summary>What the trade calls a key on its papers: a wrong name that is meant right.</summary>
    public ImmutableArray<(string Word, Key Key)> AlsoCalled { get; init; } = [];

    public Key? Find(string name)
    {
        foreach (var key in Keys)
        {
            if (key.Name == name)
            {
                return key;
            }
        }

        return null;
    }
}
