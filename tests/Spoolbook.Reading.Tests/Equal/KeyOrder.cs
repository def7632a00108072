using YamlDotNet.RepresentationModel;

namespace Spoolbook.Reading.Tests.Equal;

/// <summary>The same YAML with the keys of every map in the opposite order.</summary>
static class KeyOrder
{
    public static string Reversed(string yaml)
    {
        var stream = new YamlStream();
        stream.Load(new StringReader(yaml));
        var text = new StringWriter { NewLine = "\n" };
        new YamlStream(new YamlDocument(Reversed(stream.Documents[0].RootNode))).Save(text, assignAnchors: false);
        return text.ToString();
    }

    static YamlNode Reversed(YamlNode node) =>
        node switch
        {
            YamlMappingNode map => new YamlMappingNode(map.Children.Reverse().Select(c => KeyValuePair.Create(c.Key, Reversed(c.Value)))),
            YamlSequenceNode list => new YamlSequenceNode(list.Children.Select(Reversed)),
            _ => node,
        };
}
