namespace Spoolbook.Printing;

/// <summary>A check's page for the terminal: headings bold, examples indented, the rest as written.</summary>
internal static class MarkdownPrinter
{
    public static void Print(string markdown, CommandEnvironment around)
    {
        var ink = new Ink(around.Colour);
        var fenced = false;
        foreach (var line in markdown.TrimEnd().Split('\n'))
        {
            if (line.StartsWith("```", StringComparison.Ordinal))
            {
                fenced = !fenced;
                continue;
            }

            around.Out.WriteLine(
                fenced ? "    " + ink.Dim(line)
                : line.StartsWith('#') ? ink.Bold(line.TrimStart('#', ' '))
                : line.Replace("`", "", StringComparison.Ordinal)
            );
        }
    }
}
