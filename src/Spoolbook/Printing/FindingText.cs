using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Printing;

/// <summary>
/// Findings for people: place, sentence, excerpt, figures, advice. On a terminal each breaks between words; elsewhere it is a line, so
/// that a search finds it.
/// </summary>
internal sealed class FindingText(Ink ink, CommandEnvironment around, Func<string, int, string?> lineOf)
{
    const int Indent = 3,
        HelpIndent = 9;

    public IEnumerable<string> Lines(Finding finding)
    {
        var level = finding.Level switch
        {
            Level.Error => ink.Red("error"),
            Level.Warning => ink.Yellow("warning"),
            _ => ink.Blue("note"),
        };
        var head = $"{ink.Bold(finding.Place.ToString())}: {level}: {Plain.Escaped(finding.Message)} {ink.Dim($"[{finding.Check}]")}";
        foreach (var line in Broken(head, Indent))
        {
            yield return line;
        }

        foreach (var line in ExcerptPrinter.Of(lineOf(finding.Place.File, finding.Place.Line), finding.Place, around.Width, ink))
        {
            yield return line;
        }

        if (finding.Figures.Length > 0)
        {
            var figures = "   = " + string.Join(", ", finding.Figures.Select(f => Plain.Escaped($"{f.Name}: {f.Value}")));
            foreach (var line in Broken(figures, Indent + 2))
            {
                yield return line;
            }
        }

        foreach (var line in finding.Others.SelectMany(o => Broken($"   = {Plain.Escaped(o.Message)}: {o.Place}", Indent + 2)))
        {
            yield return line;
        }

        if (finding.Help.Length > 0)
        {
            var lines = finding.Help.Split('\n');
            var help = lines.Skip(1).Select(line => "         " + Plain.Escaped(line));
            foreach (var line in help.Prepend($"   {ink.Green("help:")} {Plain.Escaped(lines[0])}").SelectMany(l => Broken(l, HelpIndent)))
            {
                yield return line;
            }
        }

        yield return "";
    }

    IEnumerable<string> Broken(string line, int indent) => WrappedText.On(around, line, indent);

    /// <summary><c>2 errors, 1 warning, no notes</c></summary>
    public static string Count(IReadOnlyCollection<Finding> findings) =>
        string.Join(
            ", ",
            Some(findings.Count(f => f.Level == Level.Error), "error"),
            Some(findings.Count(f => f.Level == Level.Warning), "warning"),
            Some(findings.Count(f => f.Level == Level.Note), "note")
        );

    static string Some(int count, string what) => count == 0 ? $"no {what}s" : Plain.Count(count, what);
}
