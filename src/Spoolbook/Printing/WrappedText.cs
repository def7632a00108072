namespace Spoolbook.Printing;

/// <summary>Text broken between its parts, for a narrow terminal.</summary>
internal static class WrappedText
{
    /// <summary>Parts with something between them, on as many lines as they need; the later lines are set in.</summary>
    /// <param name="between">What is between two parts on a line.</param>
    public static IEnumerable<string> Lines(IEnumerable<string> parts, string between, int width, int indent)
    {
        var line = "";
        foreach (var part in parts)
        {
            var longer = line.Length == 0 ? part : line + between + part;
            if (line.Trim().Length > 0 && longer.Length > width)
            {
                yield return line;
                longer = new string(' ', indent) + part;
            }

            line = longer;
        }

        if (line.Length > 0)
        {
            yield return line;
        }
    }

    /// <summary>A sentence, broken between its words.</summary>
    /// <param name="start">What the first line begins with, blanks among it.</param>
    public static IEnumerable<string> Words(string start, string text, int width, int indent)
    {
        var words = text.Split(' ');
        return Lines(words.Skip(1).Prepend(start + words[0]), " ", width, indent);
    }
}
