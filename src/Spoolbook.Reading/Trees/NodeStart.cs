using YamlDotNet.Core.Events;

namespace Spoolbook.Reading.Trees;

/// <summary>Finds where a node's own text begins: after its anchor and its tag.</summary>
static class NodeStart
{
    public static int Of(ParsingEvent e, string text)
    {
        var at = (int)e.Start.Index;
        if (e is not NodeEvent node || e is AnchorAlias || (node.Anchor.IsEmpty && node.Tag.IsEmpty))
        {
            return at;
        }

        while (at < text.Length && text[at] is '&' or '!')
        {
            at = SkipBlanks(text, SkipWord(text, at));
        }

        return at;
    }

    static int SkipWord(string text, int at)
    {
        while (at < text.Length && !char.IsWhiteSpace(text[at]))
        {
            at++;
        }

        return at;
    }

    static int SkipBlanks(string text, int at)
    {
        while (at < text.Length && char.IsWhiteSpace(text[at]))
        {
            at++;
        }

        return at;
    }
}
