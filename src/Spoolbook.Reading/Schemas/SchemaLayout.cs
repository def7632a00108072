using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace Spoolbook.Reading.Schemas;

/// <summary>JSON for people to read: what fits on one line goes on one line.</summary>
static class SchemaLayout
{
    // Room for a key with its sentence, its form and an example.
    const int Columns = 200;

    static readonly JsonSerializerOptions _inALine = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The whole document, with a line end at its end.</summary>
    public static string Text(JsonNode document)
    {
        var text = new StringBuilder();
        Add(text, document, indent: 0, before: 0);
        return text.Append('\n').ToString();
    }

    /// <param name="before">Columns already taken on the line.</param>
    static void Add(StringBuilder text, JsonNode? node, int indent, int before)
    {
        var line = Line(node);
        // The one more column is for a comma.
        if (node is not (JsonObject or JsonArray) || before + line.Length + 1 <= Columns)
        {
            text.Append(line);
            return;
        }

        var (open, close) = node is JsonObject ? ('{', '}') : ('[', ']');
        var inner = indent + 2;
        text.Append(open);
        var separator = "\n";
        foreach (var (name, value) in Members(node))
        {
            text.Append(separator).Append(' ', inner).Append(name);
            Add(text, value, inner, inner + name.Length);
            separator = ",\n";
        }

        text.Append('\n').Append(' ', indent).Append(close);
    }

    static string Line(JsonNode? node) =>
        node switch
        {
            JsonObject { Count: > 0 } => $"{{ {Joined(node)} }}",
            JsonObject => "{}",
            JsonArray => $"[{Joined(node)}]",
            null => "null",
            _ => node.ToJsonString(_inALine),
        };

    static string Joined(JsonNode node) => string.Join(", ", Members(node).Select(m => m.Name + Line(m.Value)));

    static IEnumerable<(string Name, JsonNode? Value)> Members(JsonNode node) =>
        node is JsonObject map
            ? map.Select(m => ($"\"{JavaScriptEncoder.UnsafeRelaxedJsonEscaping.Encode(m.Key)}\": ", m.Value))
            : node.AsArray().Select(v => ("", v));
}
