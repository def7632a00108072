using Spoolbook.Reading.Files;
using Spoolbook.Reading.Trees;
using YamlDotNet.Core;

namespace Spoolbook.Reading.Editing;

static class FileComments
{
    /// <summary>The comments between two characters, from <c>#</c> to the end of their line, in order.</summary>
    /// <param name="node">What is written there: a <c>#</c> inside its words is no comment.</param>
    public static List<string> Between(SourceFile source, int from, int to, Node node)
    {
        var words = new List<(int From, int To)>();
        Gather(node, source, words);
        var comments = new List<string>();
        for (var at = from; at < to; at++)
        {
            if (
                source.Text[at] == '#'
                && (at == 0 || char.IsWhiteSpace(source.Text[at - 1]))
                && !words.Exists(w => w.From <= at && at < w.To)
            )
            {
                var end = at + source.RestOfLine(at).Length;
                comments.Add(source.Text[at..end]);
                at = end;
            }
        }

        return comments;
    }

    static void Gather(Node node, SourceFile source, List<(int From, int To)> words)
    {
        switch (node)
        {
            case ScalarNode { Style: ScalarStyle.Literal or ScalarStyle.Folded } block:
                // A comment can follow the sign that opens the block.
                words.Add((block.Start + source.RestOfLine(block.Start).Length, block.End));
                break;
            case ScalarNode scalar:
                words.Add((scalar.Start, scalar.End));
                break;
            case ListNode list:
                foreach (var item in list.Written)
                {
                    Gather(item, source, words);
                }

                break;
            case MapNode map:
                foreach (var entry in map.Written)
                {
                    Gather(entry.WrittenKey, source, words);
                    Gather(entry.WrittenValue, source, words);
                }

                break;
        }
    }
}
