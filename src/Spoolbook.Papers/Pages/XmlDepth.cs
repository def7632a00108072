using System.Xml;

namespace Spoolbook.Papers.Pages;

/// <summary>How deep the elements of a text lie, before a tree is made of them: that takes the square of the depth.</summary>
static class XmlDepth
{
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
