using System.Collections.Immutable;
using System.Text.RegularExpressions;

namespace Spoolbook.Checks.Tests.Pages;

/// <summary>
/// A mistake to plant in the sample production, from the last section of a check's page: after <c>---</c> a file, after
/// <c>-</c> a text that is there once, and after <c>+</c> its replacement. <c>+++ /dev/null</c> removes the file,
/// <c>--- /dev/null</c> adds the one after <c>+++</c>, and <c>+++ FILE, saved as Latin-1</c> says how it is saved.
/// </summary>
sealed partial record Planting(string Check, int Number, string Diff)
{
    const string Head = "--- ";
    const string Becomes = "+++ ";
    const string Nowhere = "/dev/null";
    const string SavedAsLatin = ", saved as Latin-1";

    public static ImmutableArray<Planting> Of(CheckPage page) =>
        [.. Block().Matches(page.Text).Select((m, index) => new Planting(page.Name, index + 1, m.Groups[1].Value))];

    /// <summary>The sample without a planted mistake.</summary>
    public static ExampleFiles Untouched => ExampleFiles.Of(SampleText.Files, new HashSet<string>()).WithPictures();

    /// <summary>The files that something is planted in.</summary>
    public IEnumerable<string> Files =>
        Diff.Split('\n').Where(l => l.StartsWith(Head, StringComparison.Ordinal)).Select(l => l[Head.Length..]);

    /// <summary>The sample with the mistake in it.</summary>
    /// <exception cref="FormatException">The text to replace is not there exactly once.</exception>
    public ExampleFiles Planted()
    {
        var files = SampleText.Files.ToDictionary(StringComparer.Ordinal);
        var latin = new HashSet<string>(StringComparer.Ordinal);
        foreach (var part in Diff.Split("\n" + Head).Select(p => p.StartsWith(Head, StringComparison.Ordinal) ? p[Head.Length..] : p))
        {
            var lines = part.TrimEnd('\n').Split('\n');
            var name = lines[0];
            var becomes = lines.Skip(1).FirstOrDefault(l => l.StartsWith(Becomes, StringComparison.Ordinal))?[Becomes.Length..];
            if (name == Nowhere)
            {
                files[becomes!] = string.Concat(lines.Skip(2).Select(l => l[1..] + "\n"));
                continue;
            }

            if (becomes == Nowhere)
            {
                files.Remove(name);
                continue;
            }

            if (becomes?.EndsWith(SavedAsLatin, StringComparison.Ordinal) == true)
            {
                latin.Add(name);
            }

            files[name] = Changed(files[name], lines.Skip(becomes is null ? 1 : 2));
        }

        return ExampleFiles.Of(files, latin).WithPictures();
    }

    /// <summary>Some files with the mistake in one of them.</summary>
    public ImmutableSortedDictionary<string, string> In(ImmutableSortedDictionary<string, string> files)
    {
        var lines = Diff.TrimEnd('\n').Split('\n');
        var name = lines[0][Head.Length..];
        return files.SetItem(name, Changed(files[name], lines.Skip(1)));
    }

    public override string ToString() => $"{Check} {Number}";

    string Changed(string text, IEnumerable<string> lines)
    {
        var (old, instead) = (new List<string>(), new List<string>());
        foreach (var line in lines)
        {
            if (line[0] == '-' && instead.Count > 0)
            {
                text = Replaced(text, old, instead);
                (old, instead) = ([], []);
            }

            (line[0] == '-' ? old : instead).Add(line[1..]);
        }

        return Replaced(text, old, instead);
    }

    string Replaced(string text, List<string> old, List<string> instead)
    {
        var there = string.Join('\n', old);
        var at = text.IndexOf(there, StringComparison.Ordinal);
        if (at < 0 || text.IndexOf(there, at + 1, StringComparison.Ordinal) >= 0)
        {
            throw new FormatException($"Planting {this}: this stands in the sample {(at < 0 ? "nowhere" : "more than once")}:\n{there}");
        }

        // Whole lines without a replacement go with their line ends.
        var end = at + there.Length + (instead.Count == 0 ? 1 : 0);
        return text[..at] + string.Join('\n', instead) + text[end..];
    }

    [GeneratedRegex("```diff\n((?:(?!```).)*)```", RegexOptions.Singleline)]
    private static partial Regex Block();
}
