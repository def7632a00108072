using System.Text.RegularExpressions;

namespace Spoolbook.Checks.Tests.Pages;

/// <summary>The examples of a check's page.</summary>
/// <param name="Flagged">What is flagged, with its findings.</param>
/// <param name="Fine">What is fine.</param>
sealed partial record PageExamples(IReadOnlyList<(string Yaml, string Report)> Flagged, IReadOnlyList<string> Fine)
{
    public static PageExamples Of(CheckPage page)
    {
        var flagged = FlaggedBlock().Matches(page.Text).Select(m => (m.Groups[1].Value, m.Groups[2].Value)).ToArray();
        var fine = YamlBlock().Matches(page.Text).Select(m => m.Groups[1].Value).Except(flagged.Select(f => f.Item1)).ToArray();
        return new PageExamples(flagged, fine);
    }

    /// <summary>Writes the page with the real findings into the folder `received`, where they differ from the written ones.</summary>
    public static void Receive(CheckPage page, string name, Func<string, string> said)
    {
        var received = Path.Combine(AppContext.BaseDirectory, "received", name.Replace('/', '~') + ".md");
        Directory.CreateDirectory(Path.GetDirectoryName(received)!);
        File.Delete(received);
        var corrected = Corrected(page, said);
        if (corrected != page.Text)
        {
            File.WriteAllText(received, corrected);
        }
    }

    /// <summary>The page with the real findings in place of the written ones.</summary>
    static string Corrected(CheckPage page, Func<string, string> said) =>
        FlaggedBlock().Replace(page.Text, m => $"```yaml\n{m.Groups[1].Value}```\n\n```text\n{said(m.Groups[1].Value)}```");

    [GeneratedRegex("```yaml\n((?:(?!```).)*)```\n\n```text\n((?:(?!```).)*)```", RegexOptions.Singleline)]
    private static partial Regex FlaggedBlock();

    [GeneratedRegex("```yaml\n((?:(?!```).)*)```", RegexOptions.Singleline)]
    private static partial Regex YamlBlock();
}
