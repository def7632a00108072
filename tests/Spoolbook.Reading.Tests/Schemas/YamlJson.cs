using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using YamlDotNet.Core;
using YamlDotNet.RepresentationModel;

namespace Spoolbook.Reading.Tests.Schemas;

/// <summary>YAML as an editor sees it: the core schema of YAML 1.2 makes numbers, booleans and null of plain values.</summary>
static class YamlJson
{
    /// <summary>The JSON of a text; null where the text is not YAML or JSON cannot express it.</summary>
    public static JsonElement? Of(string yaml)
    {
        try
        {
            var stream = new YamlStream();
            stream.Load(new StringReader(yaml));
            return stream.Documents.Count == 1 ? JsonSerializer.SerializeToElement(Node(stream.Documents[0].RootNode)) : null;
        }
        catch (Exception e) when (e is YamlException or ArgumentException or InvalidOperationException)
        {
            return null;
        }
    }

    static JsonNode? Node(YamlNode node) =>
        node switch
        {
            YamlMappingNode map => new JsonObject(
                map.Children.Select(c => KeyValuePair.Create(((YamlScalarNode)c.Key).Value!, Node(c.Value)))
            ),
            YamlSequenceNode list => new JsonArray([.. list.Children.Select(Node)]),
            YamlScalarNode { Style: ScalarStyle.Plain } plain => Plain(plain.Value!),
            YamlScalarNode quoted => JsonValue.Create(quoted.Value),
            _ => throw new InvalidOperationException("An alias is left."),
        };

    static JsonValue? Plain(string text) =>
        text switch
        {
            "" or "~" or "null" => null,
            "true" => JsonValue.Create(true),
            "false" => JsonValue.Create(false),
            _ when long.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var whole) => JsonValue.Create(
                whole
            ),
            _ when IsNumber(text) => JsonValue.Create(decimal.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture)),
            _ => JsonValue.Create(text),
        };

    static bool IsNumber(string text) =>
        text.All(c => char.IsAsciiDigit(c) || c is '.' or '-')
        && decimal.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out _);
}
