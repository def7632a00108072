using Spoolbook.Reading.Files;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace Spoolbook.Acceptance.Silent;

/// <summary>Every value of a YAML file with its place, by a parser that is not the product's way through the tree.</summary>
static class WrittenValues
{
    static readonly HashSet<string> _logs = ["log", "stock-log"];

    public static List<WrittenValue> Of(string file, string text)
    {
        var values = new List<WrittenValue>();
        var parser = new Parser(new StringReader(text));
        while (parser.MoveNext())
        {
            if (parser.Current is MappingStart)
            {
                Map(parser, file, file.StartsWith(SheetNames.Rolls + "/", StringComparison.Ordinal) ? "roll" : "production", values);
            }
        }

        return values;
    }

    // Stands on the start of a map, and leaves the parser on its end.
    static void Map(Parser parser, string file, string owner, List<WrittenValue> values)
    {
        while (parser.MoveNext() && parser.Current is not MappingEnd)
        {
            var key = (Scalar)parser.Current!;
            parser.MoveNext();
            switch (parser.Current)
            {
                case Scalar value when value.Style is ScalarStyle.Plain or ScalarStyle.SingleQuoted or ScalarStyle.DoubleQuoted:
                    values.Add(Value(file, $"{owner}.{key.Value}", value, At(key.Start)));
                    break;
                case MappingStart:
                    Map(parser, file, key.Value, values);
                    break;
                case SequenceStart:
                    List(parser, file, owner, key.Value, values);
                    break;
            }
        }
    }

    static void List(Parser parser, string file, string owner, string key, List<WrittenValue> values)
    {
        while (parser.MoveNext() && parser.Current is not SequenceEnd)
        {
            var start = At(parser.Current!.Start);
            switch (parser.Current)
            {
                case Scalar value when value.Style is ScalarStyle.Plain or ScalarStyle.SingleQuoted or ScalarStyle.DoubleQuoted:
                    values.Add(Value(file, $"{owner}.{key}", value, start));
                    break;
                case MappingStart:
                    var before = values.Count;
                    Map(parser, file, key == SheetNames.Rolls ? "roll" : key, values);
                    if (_logs.Contains(key))
                    {
                        var word = values.Skip(before).FirstOrDefault()?.Key.Split('.')[0] ?? "wind";
                        values.Add(new WrittenValue(file, $"{key}.{word}", "", start, At(parser.Current!.End), start, true));
                    }

                    break;
                case SequenceStart:
                    List(parser, file, owner, key, values);
                    break;
            }
        }
    }

    static WrittenValue Value(string file, string key, Scalar value, int entry) =>
        new(file, key, value.Value, At(value.Start), At(value.End), entry, false);

    static int At(Mark mark) => (int)mark.Index;
}
