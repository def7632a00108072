using System.Collections.Immutable;
using Spoolbook.Reading.Trees;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Keys;

/// <summary>
/// Reads one map by its table of keys. Opening it reports keys that are unknown or missing; asking for a value reports what is wrong
/// with that value.
/// </summary>
sealed class MapReader
{
    readonly MapNode _map;
    readonly KeyTable _table;

    MapReader(MapNode map, KeyTable table, Place head, ReadingContext context)
    {
        _map = map;
        _table = table;
        Head = head;
        Context = context;
    }

    /// <summary>Where the map begins: the key it is under, or its own first key.</summary>
    public Place Head { get; }

    public ReadingContext Context { get; }

    /// <summary>Opens the map under a key; null, with a finding, where something else is there.</summary>
    public static MapReader? Under(MapEntry entry, KeyTable table, ReadingContext context) =>
        Open(entry.Value, table, entry.Key.Place, context);

    /// <summary>Opens a map in a list or at the top of a file; null, with a finding, where something else is there.</summary>
    public static MapReader? Alone(Node node, KeyTable table, ReadingContext context)
    {
        var first = node is MapNode { Entries: [var entry, ..] } ? entry.Key.Place : node.Place;
        return Open(node, table, first, context);
    }

    /// <summary>The same map, whose values are read in another context.</summary>
    public MapReader In(ReadingContext context) => new(_map, _table, Head, context);

    /// <summary>The value of a key; null where it is missing or wrong.</summary>
    public Located<T>? Value<T>(ValueKey<T> key) => _map.Entry(key.Name) is { } entry ? Single(key, key.Form, entry.Value) : null;

    /// <summary>
    /// Null, for a record that lacks a part it needs. Reads the other values all the same: their findings come now and not only after
    /// the first correction. Whoever calls this has already read the lists and maps.
    /// </summary>
    public T? LetGo<T>()
        where T : class
    {
        foreach (var key in _table.Keys.OfType<IValueKey>())
        {
            key.Ask(this);
        }

        return null;
    }

    /// <summary>The values of a key, without those that are wrong.</summary>
    public ImmutableArray<Located<T>> Values<T>(ValuesKey<T> key)
    {
        var node = _map.Entry(key.Name)?.Value;
        var values =
            from item in node is ListNode list ? list.Items
            : node is null ? []
            : [node]
            let value = Single(key, key.Form, item)
            where value is not null
            select value;
        return [.. values];
    }

    /// <summary>The names under a key with their values, without those that are wrong.</summary>
    public ImmutableArray<(Located<string> Name, Located<T> Value)> Named<T>(NamesKey<T> key)
    {
        switch (_map.Entry(key.Name)?.Value)
        {
            case null or ScalarNode { IsBlank: true }:
                return [];
            case MapNode map:
                var named =
                    from entry in map.Entries
                    let value = Single(key, key.Form, entry.Value)
                    where value is not null
                    select (new Located<string>(entry.Key.Text, entry.Key.Place), value);
                return [.. named];
            case var other:
                Context.Findings.Add(
                    SheetChecks.WrongKind,
                    Sentence.Of("sheet/wrong-kind.message.names", ("key", key.Name), ("names", key.Names), ("what", other.What)),
                    other.Place,
                    Sentence.Of("sheet/wrong-kind.help.line", ("line", KeyFindings.Line(key)))
                );
                return [];
        }
    }

    /// <summary>The map under a key; null where it is missing or something else.</summary>
    public MapReader? Map(MapKey key) =>
        _map.Entry(key.Name) is { Value: not ScalarNode { IsBlank: true } } entry ? Under(entry, key.Table, Context) : null;

    /// <summary>The maps in the list under a key; null for an item that is something else.</summary>
    public IEnumerable<MapReader?> Maps(MapsKey key) => Items(key).Select(item => Alone(item, key.Table, Context));

    public ImmutableArray<Node> Items(Key key)
    {
        switch (_map.Entry(key.Name)?.Value)
        {
            case null or ScalarNode { IsBlank: true }:
                return [];
            case ListNode list:
                return list.Items;
            case var other:
                Context.Findings.Add(
                    SheetChecks.WrongKind,
                    Sentence.Of("sheet/wrong-kind.message.list", ("key", key.Name), ("what", other.What)),
                    other.Place,
                    Sentence.Of("sheet/wrong-kind.help.list")
                );
                return [];
        }
    }

    public bool Has(Key key) => _map.Entry(key.Name) is { Value: not ScalarNode { IsBlank: true } };

    public bool IsList(Key key) => _map.Entry(key.Name)?.Value is ListNode;

    static MapReader? Open(Node node, KeyTable table, Place head, ReadingContext context)
    {
        if (node is not MapNode map)
        {
            context.Findings.Add(
                SheetChecks.WrongKind,
                Sentence.Of("sheet/wrong-kind.message.map", ("what", node.What), ("owner", table.Owner)),
                node.Place.Length > 0 ? node.Place : head,
                Sentence.Of("sheet/wrong-kind.help.map", ("line", KeyFindings.Line(table.Keys[0])))
            );
            return null;
        }

        KeyFindings.CheckUnknown(map, table, context.Findings);
        KeyFindings.CheckMissing(map, table, head, context.Findings);
        KeyFindings.CheckEither(map, table, head, context.Findings);
        KeyFindings.CheckNotBoth(map, table, context.Findings);
        return new MapReader(map, table, head, context);
    }

    Located<T>? Single<T>(Key key, Forms.Form<T> form, Node node)
    {
        switch (node)
        {
            case ScalarNode { IsBlank: true }:
                return null;
            case ScalarNode scalar:
                if (scalar.Cut is { } cut && ReferenceEquals(form, Forms.WordForms.Text))
                {
                    Context.Findings.Add(CutText.Of(scalar.Text, cut.Place, cut.Text) with { Roll = Context.Findings.Roll });
                }

                return form.Read(scalar.Text, scalar.Place, Context);
            default:
                Context.Findings.Add(
                    SheetChecks.WrongKind,
                    Sentence.Of("sheet/wrong-kind.message.value", ("key", key.Name), ("what", node.What)),
                    node.Place,
                    Sentence.Of("sheet/wrong-kind.help.line", ("line", KeyFindings.Line(key)))
                );
                return null;
        }
    }
}
