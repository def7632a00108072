using System.Collections.Immutable;
using System.Text.RegularExpressions;

namespace Spoolbook.Checks.Tests.Pages;

/// <summary>
/// The tiny production of the folder Base with an example laid over it: each key at the margin of the example replaces
/// that key in its file. The example is of <c>rolls/r01.yaml</c> until a line such as <c># kit.yaml</c> names another
/// file; a roll that the base does not have starts
/// as a copy of R01, shot a day later for each number, as one body holds one roll. A picture, <c># pier.svg</c>, or a template,
/// <c># templates/words.en.txt</c>, is taken from the example as it is. <c># no kit.yaml</c> removes a file, and
/// <c># kit.yaml, saved as Latin-1</c> says how it is saved.
/// </summary>
static partial class BaseProduction
{
    const string FirstRoll = "rolls/r01.yaml";
    const string TakenAway = "no ";
    const string SavedAsLatin = ", saved as Latin-1";

    static readonly ImmutableSortedDictionary<string, string> Files = ReadFiles();

    /// <summary>Its files without an example.</summary>
    public static IEnumerable<KeyValuePair<string, string>> Untouched => Files;

    public static ExampleFiles With(string example)
    {
        var files = Files.ToDictionary(StringComparer.Ordinal);
        var latin = new HashSet<string>(StringComparer.Ordinal);
        foreach (var (head, overlay) in Parts(example))
        {
            var (name, saved) = (head.Split(',')[0], head.EndsWith(SavedAsLatin, StringComparison.Ordinal));
            if (name.StartsWith(TakenAway, StringComparison.Ordinal))
            {
                files.Remove(name[TakenAway.Length..]);
                continue;
            }

            if (!name.EndsWith(".yaml", StringComparison.Ordinal))
            {
                files[name] = overlay;
                continue;
            }

            var under = files.GetValueOrDefault(name)
                ?? (name.StartsWith("../", StringComparison.Ordinal) ? "" : Later(files[FirstRoll], name));
            files[name] = Merge(under, overlay);
            if (saved)
            {
                latin.Add(name);
            }
        }

        return ExampleFiles.Of(files, latin);
    }

    static string Later(string roll, string name) =>
        name.StartsWith("rolls/r0", StringComparison.Ordinal) ? roll.Replace("2026-10-04", $"2026-10-0{3 + (name[8] - '0')}") : roll;

    /// <summary>The lines of the laid-over files that an example marks with a check's name: file, line and name.</summary>
    public static IEnumerable<(string File, int Line, string Check)> Marks(ExampleFiles files) =>
        Marks(files.Names.Concat(files.PassedOver.Select(passed => passed.Name)).Select(name => (name, files.Open(name).Text ?? "")));

    /// <summary>The same of some files.</summary>
    public static IEnumerable<(string File, int Line, string Check)> Marks(IEnumerable<(string Name, string Text)> files) =>
        from file in files
        let name = file.Name
        from line in file.Text.Split('\n').Select((text, index) => (Text: text, Number: index + 1))
        let mark = Mark().Match(line.Text)
        where mark.Success
        from check in mark.Groups[1].Value.Split(' ')
        select (name, line.Number, check);

    public static IEnumerable<(string Name, string Text)> Parts(string example)
    {
        var name = FirstRoll;
        var lines = new List<string>();
        foreach (var line in example.Split('\n'))
        {
            if (FileHead().Match(line) is { Success: true } head)
            {
                yield return (name, string.Join('\n', lines));
                (name, lines) = (head.Groups[1].Value, []);
            }
            else
            {
                lines.Add(line);
            }
        }

        yield return (name, string.Join('\n', lines));
    }

    public static string Merge(string under, string over)
    {
        var blocks = Blocks(over);
        var replaced = blocks.Select(b => b.Key).ToHashSet(StringComparer.Ordinal);
        return string.Concat(Blocks(under).Where(b => !replaced.Contains(b.Key)).Concat(blocks).Select(b => b.Text));
    }

    // A block is a line at the margin with what is indented under it.
    static List<(string Key, string Text)> Blocks(string yaml)
    {
        var blocks = new List<(string Key, string Text)>();
        foreach (var line in yaml.Split('\n').Where(l => l.Length > 0))
        {
            if (blocks.Count == 0 || !char.IsWhiteSpace(line[0]))
            {
                blocks.Add((line.Split(':')[0], line + "\n"));
            }
            else
            {
                blocks[^1] = (blocks[^1].Key, blocks[^1].Text + line + "\n");
            }
        }

        return blocks;
    }

    static ImmutableSortedDictionary<string, string> ReadFiles()
    {
        var assembly = typeof(BaseProduction).Assembly;
        return assembly
            .GetManifestResourceNames()
            .Where(n => n.EndsWith(".yaml", StringComparison.Ordinal))
            .ToImmutableSortedDictionary(
                name => name.Replace('\\', '/'),
                name =>
                {
                    using var reader = new StreamReader(assembly.GetManifestResourceStream(name)!);
                    return reader.ReadToEnd().ReplaceLineEndings("\n");
                },
                StringComparer.Ordinal
            );
    }

    [GeneratedRegex("^# ((?:no )?\\S+\\.(?:yaml|svg|txt|html|json|bak|part)(?:, saved as Latin-1)?)$")]
    private static partial Regex FileHead();

    [GeneratedRegex("# ([a-z]+/[a-z-]+(?: [a-z]+/[a-z-]+)*)$")]
    private static partial Regex Mark();
}
