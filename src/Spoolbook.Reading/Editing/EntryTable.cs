using System.Collections.Immutable;
using Spoolbook.Reading.Keys;

namespace Spoolbook.Reading.Editing;

/// <summary>The keys of one kind of entry, in the order they are written in.</summary>
public sealed class EntryTable
{
    /// <summary>The box SE in a line, where <c>short-end</c> says that it was kept or thrown away.</summary>
    internal const string ShortEndBox = "se";

    internal EntryTable(string word, params ReadOnlySpan<KeyTable> tables)
    {
        Word = word;
        var keys = ImmutableArray.CreateBuilder<EntryKey>();
        foreach (var table in tables)
        {
            foreach (var key in table.Keys)
            {
                if (key is IValueKey)
                {
                    keys.Add(new EntryKey(key, NameOf(key)));
                }
            }

            foreach (var (called, key) in table.AlsoCalled)
            {
                AlsoCalled = called.Equals(NameOf(key), StringComparison.OrdinalIgnoreCase)
                    ? AlsoCalled
                    : [.. AlsoCalled, (called, NameOf(key))];
            }

            Either = table.Either.IsEmpty ? Either : Names(table.Either);
            NotBoth = [.. NotBoth, .. Array.ConvertAll([.. table.NotBoth], pair => (pair.One.Name, pair.Other.Name))];
        }

        Keys = keys.ToImmutable();
    }

    public string Word { get; }

    public ImmutableArray<EntryKey> Keys { get; }

    /// <summary>Keys of which an entry needs exactly one.</summary>
    public ImmutableArray<string> Either { get; } = [];

    /// <summary>Pairs of keys that say the same in two ways.</summary>
    public ImmutableArray<(string One, string Other)> NotBoth { get; } = [];

    /// <summary>What the trade calls a key on its papers, beside its name here.</summary>
    public ImmutableArray<(string Word, string Key)> AlsoCalled { get; } = [];

    public EntryKey? Find(string name)
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

    static string NameOf(Key key) => key == TotalsKeys.ShortEnd ? ShortEndBox : key.Name;

    static ImmutableArray<string> Names(ImmutableArray<Key> keys) => [.. Array.ConvertAll([.. keys], key => key.Name)];
}
