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
            if (line.Trim().Length > 0 && Shown(longer) > width)
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

    /// <summary>A line as it is; on a terminal broken between its words.</summary>
    public static IEnumerable<string> On(CommandEnvironment around, string line, int indent) =>
        around.Wraps ? Words("", line, around.Width, indent) : [line];

    // Colours take no room.
    static int Shown(string text)
    {
        var shown = text.Length;
        for (var at = text.IndexOf('\e', StringComparison.Ordinal); at >= 0; at = text.IndexOf('\e', at + 1))
        {
            shown -= text.IndexOf('m', at) + 1 - at;
        }

        return shown;
    }
}
