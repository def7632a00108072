using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks;

/// <summary>
/// A check's page. Its first line is the check's name, its second paragraph the level and a one-sentence summary:
/// <c>*Error.* A take …</c>.
/// </summary>
/// <param name="Name">The check's name, <c>group/what</c>.</param>
/// <param name="Level">The level of its findings.</param>
/// <param name="Summary">What is wrong, in one sentence.</param>
/// <param name="Text">The whole page, in Markdown.</param>
/// <param name="File">Its path in the folder of the checks: <c>Kits/FinderOpen.md</c>.</param>
public sealed record CheckPage(string Name, Level Level, string Summary, string Text, string File)
{
    /// <summary>The first half of the name.</summary>
    public string Group => Name[..Name.IndexOf('/', StringComparison.Ordinal)];

    /// <summary>The full description: the paragraphs before the first heading.</summary>
    public string Description => Between($"{Summary}\n", "\n## ");

    /// <summary>Why it matters on set and at the lab.</summary>
    public string Why => Between("## Why it matters\n", "\n## ");

    /// <summary>Whether the check uses a tolerance: its description names it in backquotes.</summary>
    public bool Names(Tolerance tolerance) => Description.Contains($"`{tolerance.Name}`", StringComparison.Ordinal);

    string Between(string before, string after)
    {
        var from = Text.IndexOf(before, StringComparison.Ordinal) + before.Length;
        var to = Text.IndexOf(after, from, StringComparison.Ordinal);
        return Text[from..(to < 0 ? Text.Length : to)].Trim();
    }

    internal static CheckPage Parse(string text, string file)
    {
        var lines = text.Split('\n');
        var words = lines[2].Split("* ", 2);
        if (
            !lines[0].StartsWith("# ", StringComparison.Ordinal)
            || words.Length != 2
            || !Enum.TryParse<Level>(words[0].Trim('*', '.'), out var level)
        )
        {
            throw new FormatException($"A check's page starts with its name and its level, and this one does not: {lines[0]}");
        }

        return new CheckPage(lines[0][2..], level, words[1], text, file);
    }
}
