using System.Text.Json;
using System.Text.Json.Nodes;
using Spoolbook.Reading.Editing;
using Spoolbook.Shoot.Records;
using YamlDotNet.Core;
using YamlDotNet.RepresentationModel;

namespace Spoolbook.Reading.Tests.Editing;

/// <summary>
/// A roll's file as an outside reader of YAML sees it, to make the same changes by hand. Short entries are written out:
/// they say the same.
/// </summary>
sealed class RollModel
{
    readonly YamlMappingNode _roll;
    readonly JsonNode _root;

    public RollModel(string text, int number)
    {
        var stream = new YamlStream();
        stream.Load(new StringReader(text));
        var root = (YamlMappingNode)stream.Documents[0].RootNode;
        _root = Node(root)!;
        var isList = root.Children.TryGetValue("rolls", out var rolls);
        _roll = isList ? (YamlMappingNode)((YamlSequenceNode)rolls!).Children[number] : root;
        Roll = (JsonObject)(isList ? _root["rolls"]![number]! : _root);
        if (Roll["log"] is not JsonArray)
        {
            Roll["log"] = new JsonArray();
        }

        foreach (var entry in Log.OfType<JsonObject>())
        {
            var (word, said) = entry.First();
            if (said is not JsonObject)
            {
                var words = said?.GetValue<string>();
                entry[word] = word == "note" && words is not null ? new JsonObject { ["note"] = words } : new JsonObject();
            }
        }
    }

    public JsonObject Roll { get; }

    public JsonArray Log => (JsonArray)Roll["log"]!;

    public Place Head => PlaceOf(_roll.Children.First().Key);

    public Place PlaceOf(int entry) => PlaceOf(Entry(entry));

    /// <summary>The lines of a key of the roll: the first, and the one after the last, counted from 0.</summary>
    public (int From, int To) LinesOf(string key)
    {
        var written = _roll.Children.First(c => c.Key is YamlScalarNode { Value: var name } && name == key);
        return ((int)written.Key.Start.Line - 1, Math.Max((int)written.Key.Start.Line, LastLine(written.Value)));
    }

    /// <summary>The lines of an entry, in the same way.</summary>
    public (int From, int To) LinesOf(int entry) =>
        ((int)Entry(entry).Start.Line - 1, Math.Max((int)Entry(entry).Start.Line, LastLine(Items[entry])));

    /// <summary>Changes keys as a hand would.</summary>
    public static void Change(JsonObject map, IEnumerable<KeyValue> keys)
    {
        foreach (var key in keys)
        {
            map.Remove(key.Key);
            if (!key.Values.IsEmpty)
            {
                map[key.Key] = key.Values.Length == 1 ? key.Values[0] : new JsonArray([.. key.Values.Select(v => JsonValue.Create(v))]);
            }
        }
    }

    /// <summary>Everything, sorted by the keys' names.</summary>
    public override string ToString() => JsonSerializer.Serialize(Sorted(_root));

    IList<YamlNode> Items => _roll.Children.TryGetValue("log", out var log) && log is YamlSequenceNode list ? list.Children : [];

    YamlNode Entry(int entry) => ((YamlMappingNode)Items[entry]).Children.First().Key;

    static Place PlaceOf(YamlNode key) => new("roll.yaml", (int)key.Start.Line, (int)key.Start.Column, ((YamlScalarNode)key).Value!.Length);

    static int LastLine(YamlNode node) =>
        node switch
        {
            YamlMappingNode { Style: YamlDotNet.Core.Events.MappingStyle.Flow } => (int)node.End.Line,
            YamlMappingNode { Children.Count: > 0 } map => LastLine(map.Children.Last().Value),
            YamlSequenceNode { Style: YamlDotNet.Core.Events.SequenceStyle.Flow } => (int)node.End.Line,
            YamlSequenceNode { Children.Count: > 0 } list => LastLine(list.Children[^1]),
            _ => (int)node.Start.Line,
        };

    static JsonNode? Node(YamlNode node) =>
        node switch
        {
            YamlMappingNode map => new JsonObject(
                map.Children.Select(c => KeyValuePair.Create(((YamlScalarNode)c.Key).Value!, Node(c.Value)))
            ),
            YamlSequenceNode list => new JsonArray([.. list.Children.Select(Node)]),
            YamlScalarNode { Style: ScalarStyle.Plain, Value: "" or "~" or "null" } => null,
            YamlScalarNode words => JsonValue.Create(words.Value),
            _ => throw new InvalidOperationException("An alias is left."),
        };

    static JsonNode? Sorted(JsonNode? node) =>
        node switch
        {
            JsonObject map => new JsonObject(
                map.OrderBy(m => m.Key, StringComparer.Ordinal).Select(m => KeyValuePair.Create(m.Key, Sorted(m.Value)))
            ),
            JsonArray list => new JsonArray([.. list.Select(Sorted)]),
            _ => node?.DeepClone(),
        };
}
