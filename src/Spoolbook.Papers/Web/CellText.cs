using System.Collections.Immutable;
using System.Xml.Linq;
using Spoolbook.Papers.Pages;

namespace Spoolbook.Papers.Web;

/// <summary>A cell's text line by line, as breaks and blocks divide it, and what of it is longest.</summary>
/// <param name="Lines">The lines, each with one blank between two words.</param>
/// <param name="LongestLine">The letters of the longest line.</param>
/// <param name="LongestWord">The letters of the longest word.</param>
internal sealed record CellText(ImmutableArray<string> Lines, int LongestLine, int LongestWord)
{
    /// <summary>Reads a cell.</summary>
    public static CellText Of(XElement cell)
    {
        var text = cell.HasElements ? string.Concat(cell.DescendantNodes().Select(Said)) : cell.Value;
        ImmutableArray<string> lines = [.. text.Split(Escaping.LineBreak).Select(line => string.Join(' ', Words(line)))];
        return new CellText(lines, lines.Max(l => l.Length), lines.Max(LongestWordOf));
    }

    /// <summary>The letters of the longest word of a text.</summary>
    public static int LongestWordOf(string text)
    {
        var longest = 0;
        foreach (var word in Words(text))
        {
            longest = Math.Max(longest, word.Length);
        }

        return longest;
    }

    static string Said(XNode node) =>
        node switch
        {
            XText said => said.Value,
            XElement element when element.Is("br") || element.Is("li") || element.Is("p") => Escaping.LineBreak.ToString(),
            _ => "",
        };

    static string[] Words(string line) => line.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
}
