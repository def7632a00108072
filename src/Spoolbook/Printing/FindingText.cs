using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Printing;

/// <summary>Findings for people: place, sentence, excerpt, figures, advice.</summary>
internal sealed class FindingText(Ink ink, int width, Func<string, int, string?> lineOf)
{
    public IEnumerable<string> Lines(Finding finding)
    {
        var level = finding.Level switch
        {
            Level.Error => ink.Red("error"),
            Level.Warning => ink.Yellow("warning"),
            _ => ink.Blue("note"),
        };
        yield return $"{ink.Bold(finding.Place.ToString())}: {level}: {Plain.Escaped(finding.Message)} {ink.Dim($"[{finding.Check}]")}";
        foreach (var line in ExcerptPrinter.Of(lineOf(finding.Place.File, finding.Place.Line), finding.Place, width, ink))
        {
            yield return line;
        }

        if (finding.Figures.Length > 0)
        {
            yield return "   = " + string.Join(", ", finding.Figures.Select(f => Plain.Escaped($"{f.Name}: {f.Value}")));
        }

        foreach (var other in finding.Others)
        {
            yield return $"   = {Plain.Escaped(other.Message)}: {other.Place}";
        }

        if (finding.Help.Length > 0)
        {
            var lines = finding.Help.Split('\n');
            yield return $"   {ink.Green("help:")} {Plain.Escaped(lines[0])}";
            foreach (var line in lines.Skip(1))
            {
                yield return "         " + Plain.Escaped(line);
            }
        }

        yield return "";
    }

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
