using System.Xml;

namespace Spoolbook.Papers.Pages;

/// <summary>How deep the elements of a text lie, before a tree is made of them: that takes the square of the depth.</summary>
static class XmlDepth
{
    /// <summary>
    /// Whether an element of a text can lie inside more than so many others, by its tags alone. Where it says no, nothing lies so deep
    /// as far as the text is well-formed, and it need not be read for that.
    /// </summary>
    public static bool MayBeTooDeep(ReadOnlySpan<char> text, int most)
    {
        var depth = 0;
        for (var at = text.IndexOf('<'); at >= 0; at = text.IndexOf('<'))
        {
            text = text[(at + 1)..];
            if (text is not [var first, ..] || first is '!' or '?')
            {
                return true;
            }

            var end = EndOfTag(text);
            if (end < 0)
            {
                return true;
            }

            depth +=
                first == '/' ? -1
                : end > 0 && text[end - 1] == '/' ? 0
                : 1;
            if (depth > most)
            {
                return true;
            }

            text = text[(end + 1)..];
        }

        return false;
    }

    // A value in quotes may hold what ends a tag.
    static int EndOfTag(ReadOnlySpan<char> tag)
    {
        for (var at = 0; at < tag.Length; at++)
        {
            var next = tag[at..].IndexOfAny('>', '"', '\'');
            if (next < 0)
            {
                return -1;
            }

            at += next;
            if (tag[at] == '>')
            {
                return at;
            }

            var closing = tag[(at + 1)..].IndexOf(tag[at]);
            if (closing < 0)
            {
                return -1;
            }

            at += closing + 1;
        }

        return -1;
    }

    /// <summary>Line and column of the first element inside more than so many others; null where none lies so deep.</summary>
    /// <exception cref="XmlException">The text is not well-formed up to there.</exception>
    public static (int Line, int Column)? TooDeep(XmlReader reader, int most)
    {
        while (reader.Read())
        {
            if (reader.NodeType == XmlNodeType.Element && reader.Depth > most && reader is IXmlLineInfo at)
            {
                return (at.LineNumber, at.LinePosition);
            }
        }

        return null;
    }
}
