using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json.Nodes;
using Spoolbook.Reading.Forms;
using Spoolbook.Reading.Keys;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Reading.Schemas;

/// <summary>A table of keys as a JSON Schema: the tables under it and the forms of values become definitions, each written once.</summary>
sealed class SchemaWriter
{
    const string OrNone = "-or-none";
    const string Nothing = "nothing";
    const string OrMany = "-or-many";

    readonly RuleNames? _rules;
    readonly SortedDictionary<string, JsonObject> _definitions = new(StringComparer.Ordinal);

    // Two bodies can be the same, such as those of two lists of texts: both go by the first one's name.
    readonly Dictionary<string, string> _namesOfBodies = [];

    readonly Dictionary<string, string> _objections = [];

    SchemaWriter(RuleNames? rules) => _rules = rules;

    public static string Write(string id, string title, KeyTable table, RuleNames? rules) =>
        SchemaLayout.Text(new SchemaWriter(rules).Document(id, title, table));

    JsonObject Document(string id, string title, KeyTable table)
    {
        foreach (var inner in KeyTables.Under(table).Skip(1))
        {
            Define(inner);
        }

        var document = new JsonObject
        {
            ["$schema"] = "https://json-schema.org/draft/2020-12/schema",
            ["$id"] = id,
            ["title"] = title,
        };
        Add(document, Body(table));
        document["$defs"] = Map(_definitions.Select(d => (d.Key, d.Value)));
        return document;
    }

    // Different maps can have the same keys, such as stock lost and stock damaged: the second points to the first.
    void Define(KeyTable table)
    {
        var (name, body) = (NameOf(table.Owner), Body(table));
        var known = Shared(name, body);
        if (known != name)
        {
            _definitions.Add(name, Reference(known));
            return;
        }

        // What an editor calls it in a sentence; only now, as a name of its own would keep two that are the same apart.
        body.Insert(0, "title", name);
    }

    JsonObject Body(KeyTable table)
    {
        var body = new JsonObject
        {
            ["type"] = "object",
            ["properties"] = Map(table.Keys.Select(key => (key.Name, Property(key)))),
            ["required"] = Names(table.Keys.Where(k => k.Required).Select(k => k.Name)),
        };
        if (!table.Either.IsDefaultOrEmpty)
        {
            body["oneOf"] = List(table.Either.Select(key => Written(key.Name)));
        }

        if (!table.NotBoth.IsEmpty)
        {
            body["allOf"] = List(table.NotBoth.Select(pair => new JsonObject { ["not"] = Written(pair.One.Name, pair.Other.Name) }));
        }

        body["additionalProperties"] = false;
        return body;
    }

    // An editor shows what is on the key itself; how to write the value is a reference beside it.
    JsonObject Property(Key key)
    {
        var property = new JsonObject { ["description"] = key.Description };
        switch (key)
        {
            case IValueKey value:
                Add(property, Value(value.Form, value.Many, blank: !key.Required));
                if (key.Example.Length > 0 && !value.Many)
                {
                    property["examples"] = new JsonArray(Example(key.Example));
                }

                break;
            case MapKey map:
                Add(property, key.Required ? Table(map.Table) : TableOrNone(map.Table));
                break;
            case MapsKey maps:
                Add(property, OrNothing(Array(Table(maps.Table))));
                break;
            case INamesKey names:
                var values = Type("object");
                NamedValues(
                    values,
                    names,
                    key == HouseRulesKeys.Levels ? _rules?.Levels
                        : key == HouseRulesKeys.Tolerances ? _rules?.Tolerances
                        : null
                );
                Add(property, OrNothing(values));
                break;
            case EntriesKey entries:
                Add(property, OrNothing(Array(Entries(entries))));
                break;
        }

        return property;
    }

    void NamedValues(JsonObject property, INamesKey key, ImmutableArray<RuleName>? names)
    {
        if (names is null)
        {
            property["additionalProperties"] = Value(key.Form, many: false, blank: true);
            return;
        }

        property["properties"] = Map(names.Value.Select(name => (name.Name, Rule(name, key.Form))));
        property["additionalProperties"] = false;
    }

    JsonObject Rule(RuleName name, Form usual)
    {
        var rule = new JsonObject { ["description"] = name.Description };
        Add(
            rule,
            name.Form is { } form
                ? Value("tolerance-" + NameOf(form.What), Own(form), $"This is not {form.What}.", many: false, blank: true)
                : Value(usual, many: false, blank: true)
        );
        if (name.Example.Length > 0)
        {
            rule["examples"] = new JsonArray(Example(name.Example));
        }

        return rule;
    }

    static FormJson Own(RuleForm form) =>
        form.MostNumber is null ? FormJson.Text(form.Pattern) : FormJson.Number(form.Pattern) with { Least = 0, Most = form.MostNumber };

    /// <summary>
    /// A reference to how a value is written: alone, as a list too (<paramref name="many"/>), or left empty (<paramref name="blank"/>).
    /// </summary>
    JsonObject Value(Form form, bool many, bool blank) =>
        Value(NameOf(form), form.Json, $"This is not {form.What}. {form.Help}".TrimEnd(), many, blank);

    /// <param name="objection">What an editor says of a text that does not fit, in place of the pattern.</param>
    JsonObject Value(string name, FormJson form, string objection, bool many, bool blank)
    {
        // Forms of one name differ at most in how a person is helped: the first one's words are right for all.
        var said = _objections.TryGetValue(name, out var first) ? first : _objections[name] = objection;
        var one = Shared(name, AnyOf(Ways(form, said)));
        if (!many && !blank)
        {
            return Reference(one);
        }

        List<JsonObject> ways = [Reference(one)];
        if (many)
        {
            ways.Add(Array(Reference(one)));
        }

        if (blank)
        {
            ways.Add(None());
        }

        return Reference(Shared(one + (many ? OrMany : "") + (blank ? OrNone : ""), AnyOf(ways)));
    }

    /// <summary>The ways to write one value, each as a schema of its own.</summary>
    static IEnumerable<JsonObject> Ways(FormJson form, string objection)
    {
        if (!form.Words.IsDefaultOrEmpty)
        {
            yield return new JsonObject { ["enum"] = Names(form.Words) };
        }

        foreach (var type in form.Types)
        {
            var way = Type(type);
            if (type == "string" && form.Pattern is { } pattern)
            {
                way["pattern"] = pattern;
                // The words to choose from are said already.
                if (form.Words.IsDefaultOrEmpty)
                {
                    way["errorMessage"] = objection;
                }
            }

            if (type is "integer" or "number")
            {
                Bounds(way, form);
            }

            yield return way;
        }
    }

    static void Bounds(JsonObject way, FormJson form)
    {
        if (form.Least is { } least)
        {
            way[form.LeastItself ? "minimum" : "exclusiveMinimum"] = least;
        }

        if (form.Most is { } most)
        {
            way["maximum"] = most;
        }
    }

    /// <summary>A list of maps with one key each: the kind of entry.</summary>
    JsonObject Entries(EntriesKey key) =>
        new()
        {
            ["type"] = "object",
            ["minProperties"] = 1,
            ["maxProperties"] = 1,
            ["properties"] = Map(key.Kinds.Select(kind => (kind.Word, Entry(kind)))),
            ["additionalProperties"] = false,
        };

    JsonObject Entry(EntryKind kind)
    {
        var entry = new JsonObject { ["description"] = kind.Description };
        Add(
            entry,
            kind.Short switch
            {
                EntryShort.None => Table(kind.Table),
                EntryShort.Words => AnyOf([Table(kind.Table), Value(WordForms.Text, many: false, blank: true)]),
                _ => AnyOf([Table(kind.Table), None(), .. Ways(FormJson.Choice(["full"], []), "")]),
            }
        );
        return entry;
    }

    static JsonObject Table(KeyTable table) => Reference(NameOf(table.Owner));

    JsonObject TableOrNone(KeyTable table) => Reference(Shared(NameOf(table.Owner) + OrNone, AnyOf([Table(table), None()])));

    JsonObject OrNothing(JsonObject value) => AnyOf([value, None()]);

    // A key may be left empty, but an editor that reads "null" offers it as a value, and nobody writes that.
    JsonObject None()
    {
        if (!_definitions.ContainsKey(Nothing))
        {
            string[] types = ["string", "number", "boolean", "object", "array"];
            _definitions.Add(Nothing, new JsonObject { ["not"] = AnyOf(types.Select(Type)) });
        }

        return Reference(Nothing);
    }

    static JsonObject Array(JsonObject items) => new() { ["type"] = "array", ["items"] = items };

    // A figure is written without quotes where people write it so.
    static JsonValue Example(string written) =>
        decimal.TryParse(written, NumberStyles.Float, CultureInfo.InvariantCulture, out var figure) && !written.StartsWith('+')
            ? JsonValue.Create(figure)
            : JsonValue.Create(written.Trim('"'));

    /// <summary>The name of a definition, written once however often it is asked for.</summary>
    string Shared(string name, JsonObject body)
    {
        var text = body.ToJsonString();
        if (_namesOfBodies.TryGetValue(text, out var known))
        {
            return known;
        }

        if (!_definitions.TryAdd(name, body))
        {
            throw new InvalidOperationException($"Two things would be defined as {name}.");
        }

        _namesOfBodies.Add(text, name);
        return name;
    }

    static string NameOf(Form form) => form.Json.Name ?? NameOf(form.What);

    /// <summary>A name without its article: <c>shutter-mark</c>.</summary>
    static string NameOf(Sentence what) => NameOf(what.ToString());

    static string NameOf(string what) =>
        string.Join('-', what.Replace(",", "", StringComparison.Ordinal).Split(' ').SkipWhile(word => word is "a" or "an" or "the"));

    static JsonObject Reference(string name) => new() { ["$ref"] = "#/$defs/" + name };

    static JsonObject AnyOf(IEnumerable<JsonObject> ways) => new() { ["anyOf"] = List(ways) };

    static JsonObject Type(string type) => new() { ["type"] = type };

    // A strict judge wants a key that is asked for to be named beside.
    static JsonObject Written(params string[] keys) =>
        new() { ["properties"] = new JsonObject(keys.Select(k => KeyValuePair.Create(k, (JsonNode?)true))), ["required"] = Names(keys) };

    static JsonArray Names(IEnumerable<string> names) => new([.. names.Select(n => (JsonNode)n)]);

    static JsonArray List(IEnumerable<JsonObject> schemas) => new([.. schemas]);

    static JsonObject Map(IEnumerable<(string Name, JsonObject Schema)> schemas) =>
        new(schemas.Select(s => KeyValuePair.Create(s.Name, (JsonNode?)s.Schema)));

    static void Add(JsonObject to, JsonObject more)
    {
        foreach (var (name, node) in more.ToList())
        {
            more.Remove(name);
            to[name] = node;
        }
    }
}
