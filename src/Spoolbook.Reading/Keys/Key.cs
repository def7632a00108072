using System.Collections.Immutable;
using Spoolbook.Reading.Forms;
using Spoolbook.Reading.Maps;

namespace Spoolbook.Reading.Keys;

/// <summary>
/// A key that a map can have. The reader, the message about a misspelt key, the JSON Schema and the tables of the
/// file format all look at the same key, so none can say something else.
/// </summary>
/// <param name="Says">What it tells, in a line.</param>
abstract record Key(string Name, string Says)
{
    /// <summary>Whether the map is of no use without it.</summary>
    public bool Required { get; init; }

    /// <summary>How it may look, as YAML.</summary>
    public string Example { get; init; } = "";
}

/// <summary>A key with one value.</summary>
sealed record ValueKey<T>(string Name, Form<T> Form, string Says) : Key(Name, Says), IValueKey
{
    Form IValueKey.Form => Form;

    bool IValueKey.Many => false;

    void IValueKey.Ask(MapReader map) => map.Value(this);
}

/// <summary>A key with a list of values; one alone needs no list.</summary>
sealed record ValuesKey<T>(string Name, Form<T> Form, string Says) : Key(Name, Says), IValueKey
{
    Form IValueKey.Form => Form;

    bool IValueKey.Many => true;

    void IValueKey.Ask(MapReader map) => map.Values(this);
}

/// <summary>What can be asked of a key with values, whatever their type.</summary>
interface IValueKey
{
    Form Form { get; }

    bool Many { get; }

    /// <summary>Looks at what a map has under the key, for the findings alone.</summary>
    void Ask(MapReader map);
}

/// <summary>A key with a map.</summary>
sealed record MapKey(string Name, KeyTable Table, string Says) : Key(Name, Says);

/// <summary>A key with a list of maps of one kind.</summary>
sealed record MapsKey(string Name, KeyTable Table, string Says) : Key(Name, Says);

/// <summary>A key with a map from names, which other rooms know, to values.</summary>
/// <param name="Names">What the names are: <c>checks or groups</c>.</param>
sealed record NamesKey<T>(string Name, string Names, Form<T> Form, string Says) : Key(Name, Says), INamesKey
{
    Form INamesKey.Form => Form;
}

/// <summary>What a schema asks of a key with names, whatever the type of their values.</summary>
interface INamesKey
{
    string Names { get; }

    Form Form { get; }
}

/// <summary>A key with a list of entries, each under a word that tells its kind.</summary>
sealed record EntriesKey(string Name, ImmutableArray<EntryKind> Kinds, string Says) : Key(Name, Says);

/// <summary>One kind of entry.</summary>
/// <param name="Short">What may stand instead of the map: words, or nothing but a word of its own.</param>
sealed record EntryKind(string Word, KeyTable Table, EntryShort Short, string Says);

/// <summary>What may stand in an entry instead of a map.</summary>
enum EntryShort
{
    /// <summary>Only a map.</summary>
    None,

    /// <summary>Free words.</summary>
    Words,

    /// <summary>Nothing, or <c>full</c>.</summary>
    Full,
}

/// <summary>The keys of one kind of map.</summary>
/// <param name="Owner">The kind, as messages call it: <c>a lot</c>.</param>
sealed record KeyTable(string Owner, ImmutableArray<Key> Keys)
{
    /// <summary>Keys of which exactly one is needed.</summary>
    public ImmutableArray<Key> Either { get; init; } = [];

    /// <summary>Keys that say the same in two ways, so that not both of a pair can be written.</summary>
    public ImmutableArray<(Key One, Key Other)> NotBoth { get; init; } = [];

    public Key? Find(string name) => Keys.FirstOrDefault(k => k.Name == name);
}
