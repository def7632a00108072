using System.Text.RegularExpressions;

namespace Spoolbook.Acceptance.House;

/// <summary>How the sources are written: one type in a file, one meaning for a name, lines that fit beside another file.</summary>
public sealed partial class SourceTests
{
    const int WidestLine = 140;

    static readonly IReadOnlyList<string> Product = [.. Files("src")];

    static readonly ILookup<string, string> Homes = Product
        .SelectMany(file => TypesIn(file).Select(type => (type, file)))
        .ToLookup(t => t.type, t => t.file, StringComparer.Ordinal);

    [Fact]
    public void A_type_is_in_a_file_of_its_name()
    {
        var astray = Homes
            .SelectMany(home => home.Where(file => Stem(file) != home.Key).Select(file => $"{home.Key} in {Name(file)}"))
            .ToList();
        var share = 1 - ((double)astray.Count / Homes.Sum(home => home.Count()));

        Assert.True(share >= 0.95, $"Only {share:P1} of the types stand in a file of their name: {string.Join(", ", astray)}");
    }

    [Fact]
    public void No_two_types_share_a_name()
    {
        // A type with and without a type parameter is one thing in two forms.
        var namesakes = Homes.Where(home =>
            home.Select(Stem).Distinct().Count() > 1 || home.Select(Path.GetDirectoryName).Distinct().Count() > 1
        );

        Assert.Empty(namesakes.Select(home => $"{home.Key}: {string.Join(", ", home.Select(Name))}"));
    }

    [Fact]
    public void A_line_has_at_most_140_columns()
    {
        var wide =
            from file in Product.Concat(Files("tests"))
            from line in Code(file)
            where line.Text.Length > WidestLine && !Unbreakable().IsMatch(line.Text)
            select $"{Name(file)}:{line.Number} has {line.Text.Length}";

        Assert.Empty(wide);
    }

    // Its digests and its random numbers go through OpenSSL on Linux, and a program in one file is aborted where there is none.
    [Fact]
    public void Nothing_asks_the_framework_for_cryptography() =>
        Assert.Empty(
            Product.Where(file => File.ReadAllText(file).Contains("Security.Cryptography", StringComparison.Ordinal)).Select(Name)
        );

    // The text in a raw string is not ours: YAML, HTML, a reference page.
    static IEnumerable<(int Number, string Text)> Code(string file)
    {
        var raw = false;
        foreach (var (at, text) in File.ReadLines(file).Index())
        {
            var quotes = Regex.Count(text, "\"\"\"");
            if (!raw && quotes == 0)
            {
                yield return (at + 1, text);
            }

            raw ^= quotes % 2 == 1;
        }
    }

    static IEnumerable<string> TypesIn(string file) =>
        Code(file)
            .Select(line => Declaration().Match(line.Text))
            .Where(match => match.Success)
            .Select(match => match.Groups["name"].Value)
            .Distinct();

    static IEnumerable<string> Files(string folder) =>
        Directory
            .EnumerateFiles(Path.Combine(Repository.Root, folder), "*.cs", SearchOption.AllDirectories)
            .Where(file =>
                !Path.GetRelativePath(Repository.Root, file).Split(Path.DirectorySeparatorChar).Any(part => part is "obj" or "bin")
            );

    static string Stem(string file) => Path.GetFileNameWithoutExtension(file);

    static string Name(string file) => Path.GetRelativePath(Repository.Root, file);

    [GeneratedRegex(
        @"^((public|internal|file|static|sealed|abstract|readonly|partial|ref) )*(record struct|record|class|struct|enum"
            + @"|interface) (?<name>\w+)"
    )]
    private static partial Regex Declaration();

    // Breaking a regular expression or a row of published values would make it harder to read.
    [GeneratedRegex(@"^\s*(@"".*""[,;)]*|\[InlineData\(.*)$")]
    private static partial Regex Unbreakable();
}
