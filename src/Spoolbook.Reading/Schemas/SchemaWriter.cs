using System.Collections.Immutable;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Spoolbook.Reading.Forms;
using Spoolbook.Reading.Keys;

namespace Spoolbook.Reading.Schemas;

/// <summary>A table of keys as a JSON Schema: the tables under it become definitions.</summary>
sealed class SchemaWriter
{
    static readonly JsonWriterOptions _options = new()
    {
        Indented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    readonly Utf8JsonWriter _json;
    readonly SortedDictionary<string, KeyTable> _definitions = new(StringComparer.Ordinal);

    readonly RuleNames? _rules;

    SchemaWriter(Utf8JsonWriter json, RuleNames? rules) => (_json, _rules) = (json, rules);

    public static string Write(string title, KeyTable table, RuleNames? rules)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, _options))
        {
            new SchemaWriter(json, rules).Document(title, table);
        }

        return Encoding.UTF8.GetString(stream.ToArray()) + "\n";
    }

    void Document(string title, KeyTable table)
    {
        foreach (var inner in KeyTables.Under(table).Skip(1))
        {
            _definitions.Add(NameOf(inner), inner);
        }

        _json.WriteStartObject();
        _json.WriteString("$schema", "https://json-schema.org/draft/2020-12/schema");
        _json.WriteString("title", title);
        Body(table);
        _json.WriteStartObject("$defs");
        foreach (var (name, definition) in _definitions)
        {
            _json.WriteStartObject(name);
            Body(definition);
            _json.WriteEndObject();
        }

        _json.WriteEndObject();
        _json.WriteEndObject();
    }

    /// <summary>The kind without its article: <c>shutter-mark</c>.</summary>
    static string NameOf(KeyTable table) => string.Join('-', table.Owner.Split(' ').SkipWhile(word => word is "a" or "an" or "the"));

    void Body(KeyTable table)
    {
        _json.WriteString("type", "object");
        _json.WriteStartObject("properties");
        foreach (var key in table.Keys)
        {
            _json.WriteStartObject(key.Name);
            _json.WriteString("description", key.Says);
            Property(key);
            _json.WriteEndObject();
        }

        _json.WriteEndObject();
        Names("required", table.Keys.Where(k => k.Required).Select(k => k.Name));
        if (!table.Either.IsDefaultOrEmpty)
        {
            _json.WriteStartArray("oneOf");
            foreach (var key in table.Either)
            {
                _json.WriteStartObject();
                Names("required", [key.Name]);
                _json.WriteEndObject();
            }

            _json.WriteEndArray();
        }

        if (!table.NotBoth.IsEmpty)
        {
            _json.WriteStartArray("allOf");
            foreach (var (one, other) in table.NotBoth)
            {
                _json.WriteStartObject();
                _json.WriteStartObject("not");
                Names("required", [one.Name, other.Name]);
                _json.WriteEndObject();
                _json.WriteEndObject();
            }

            _json.WriteEndArray();
        }

        _json.WriteBoolean("additionalProperties", false);
    }

    void Property(Key key)
    {
        switch (key)
        {
            case IValueKey value:
                AnyOf(value.Form, value.Many, blank: !key.Required);
                if (key.Example.Length > 0 && !value.Many)
                {
                    Names("examples", [key.Example.Trim('"')]);
                }

                break;
            case MapKey map:
                Reference(map.Table, blank: !key.Required);
                break;
            case MapsKey maps:
                Names("type", ["array", "null"]);
                _json.WriteStartObject("items");
                Reference(maps.Table, blank: false);
                _json.WriteEndObject();
                break;
            case INamesKey names:
                Names("type", ["object", "null"]);
                NamedValues(names, key == HouseRulesKeys.Levels ? _rules?.Levels : key == HouseRulesKeys.Tolerances ? _rules?.Tolerances : null);
                break;
            case EntriesKey entries:
                Names("type", ["array", "null"]);
                Entries(entries);
                break;
        }
    }

    void NamedValues(INamesKey key, ImmutableArray<RuleName>? names)
    {
        if (names is null)
        {
            _json.WriteStartObject("additionalProperties");
            AnyOf(key.Form, many: false, blank: true);
            _json.WriteEndObject();
            return;
        }

        _json.WriteStartObject("properties");
        foreach (var name in names)
        {
            _json.WriteStartObject(name.Name);
            _json.WriteString("description", name.Says);
            AnyOf(name.Pattern is null ? key.Form.Json : Own(name), many: false, blank: true);
            if (name.Example.Length > 0)
            {
                Names("examples", [name.Example]);
            }

            _json.WriteEndObject();
        }

        _json.WriteEndObject();
        _json.WriteBoolean("additionalProperties", false);
    }

    static FormJson Own(RuleName name) => name.MostNumber is null
        ? FormJson.Text(name.Pattern!)
        : FormJson.Number(name.Pattern!) with { Least = 0, Most = name.MostNumber };

    void AnyOf(Form form, bool many, bool blank) => AnyOf(form.Json, many, blank);

    void AnyOf(FormJson form, bool many, bool blank)
    {
        _json.WriteStartArray("anyOf");
        Values(form);
        if (many)
        {
            _json.WriteStartObject();
            _json.WriteString("type", "array");
            _json.WriteStartObject("items");
            _json.WriteStartArray("anyOf");
            Values(form);
            _json.WriteEndArray();
            _json.WriteEndObject();
            _json.WriteEndObject();
        }

        if (blank)
        {
            Type("null");
        }

        _json.WriteEndArray();
    }

    /// <summary>The ways to write one value, each as a schema of its own.</summary>
    void Values(FormJson form)
    {
        if (!form.Words.IsDefaultOrEmpty)
        {
            _json.WriteStartObject();
            Names("enum", form.Words);
            _json.WriteEndObject();
        }

        foreach (var type in form.Types)
        {
            _json.WriteStartObject();
            _json.WriteString("type", type);
            if (type == "string" && form.Pattern is { } pattern)
            {
                _json.WriteString("pattern", pattern);
            }

            if (type is "integer" or "number")
            {
                Bounds(form);
            }

            _json.WriteEndObject();
        }
    }

    void Bounds(FormJson form)
    {
        if (form.Least is { } least)
        {
            _json.WriteNumber(form.LeastItself ? "minimum" : "exclusiveMinimum", least);
        }

        if (form.Most is { } most)
        {
            _json.WriteNumber("maximum", most);
        }
    }

    void Reference(KeyTable table, bool blank)
    {
        if (!blank)
        {
            _json.WriteString("$ref", "#/$defs/" + NameOf(table));
            return;
        }

        _json.WriteStartArray("anyOf");
        _json.WriteStartObject();
        Reference(table, blank: false);
        _json.WriteEndObject();
        Type("null");
        _json.WriteEndArray();
    }

    /// <summary>A list of maps with one key each, which tells the kind of entry.</summary>
    void Entries(EntriesKey key)
    {
        _json.WriteStartObject("items");
        _json.WriteString("type", "object");
        _json.WriteNumber("minProperties", 1);
        _json.WriteNumber("maxProperties", 1);
        _json.WriteStartObject("properties");
        foreach (var kind in key.Kinds)
        {
            _json.WriteStartObject(kind.Word);
            _json.WriteString("description", kind.Says);
            Entry(kind);
            _json.WriteEndObject();
        }

        _json.WriteEndObject();
        _json.WriteBoolean("additionalProperties", false);
        _json.WriteEndObject();
    }

    void Entry(EntryKind kind)
    {
        if (kind.Short == EntryShort.None)
        {
            Reference(kind.Table, blank: false);
            return;
        }

        _json.WriteStartArray("anyOf");
        _json.WriteStartObject();
        Reference(kind.Table, blank: false);
        _json.WriteEndObject();
        Type("null");
        Values(kind.Short == EntryShort.Words ? FormJson.AnyText : FormJson.Choice(["full"], []));
        _json.WriteEndArray();
    }

    void Type(string type)
    {
        _json.WriteStartObject();
        _json.WriteString("type", type);
        _json.WriteEndObject();
    }

    void Names(string property, IEnumerable<string> names)
    {
        _json.WriteStartArray(property);
        foreach (var name in names)
        {
            _json.WriteStringValue(name);
        }

        _json.WriteEndArray();
    }
}
