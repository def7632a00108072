using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace Spoolbook.Reading.Tests.Equal;

/// <summary>The same YAML written in another style: block or flow, quoted or not.</summary>
static class YamlStyle
{
    public static string Block(string yaml) => Rewrite(yaml, flow: false, ScalarStyle.Any);

    public static string Flow(string yaml) => Rewrite(yaml, flow: true, ScalarStyle.Any);

    public static string DoubleQuoted(string yaml) => Rewrite(yaml, flow: false, ScalarStyle.DoubleQuoted);

    public static string SingleQuoted(string yaml) => Rewrite(yaml, flow: true, ScalarStyle.SingleQuoted);

    static string Rewrite(string yaml, bool flow, ScalarStyle style)
    {
        var text = new StringWriter { NewLine = "\n" };
        var emitter = new Emitter(text);
        var parser = new Parser(new Scanner(new StringReader(yaml), skipComments: true));
        while (parser.MoveNext())
        {
            emitter.Emit(Restyled(parser.Current!, flow, style));
        }

        return text.ToString();
    }

    static ParsingEvent Restyled(ParsingEvent e, bool flow, ScalarStyle style) =>
        e switch
        {
            MappingStart map => new MappingStart(map.Anchor, map.Tag, map.IsImplicit, flow ? MappingStyle.Flow : MappingStyle.Block),
            SequenceStart list => new SequenceStart(
                list.Anchor,
                list.Tag,
                list.IsImplicit,
                flow ? SequenceStyle.Flow : SequenceStyle.Block
            ),

            // In quotes an empty value becomes an empty text.
            Scalar { Value: "" } blank => blank,
            Scalar scalar => new Scalar(
                scalar.Anchor,
                scalar.Tag,
                scalar.Value,
                style == ScalarStyle.Any ? scalar.Style : style,
                true,
                true
            ),
            _ => e,
        };
}
