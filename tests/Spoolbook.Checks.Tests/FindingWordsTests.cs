using System.Text.RegularExpressions;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Checks.Tests;

/// <summary>What findings say stands in the words file, and every word there is said.</summary>
public sealed partial class FindingWordsTests
{
    // Not in the words file yet.
    static readonly string[] _withSentencesOfTheirOwn = ["RunsOut.cs", "NoSpareSpool.cs"];

    static IEnumerable<(string File, string Text)> Sources => SourcesOf("Spoolbook.Checks");

    static IEnumerable<(string File, string Text)> SourcesOf(string room) =>
        from file in Directory.EnumerateFiles(Path.Combine(Repository.Root, "src", room), "*.cs", SearchOption.AllDirectories)
        where !file.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal)
        select (Path.GetFileName(file), File.ReadAllText(file));

    static string[] Used =>
        [
            .. Sources.Concat(SourcesOf("Spoolbook.Reading")).SelectMany(s => Key().Matches(s.Text)).Select(m => m.Groups[1].Value),
            .. Sources
                .SelectMany(s => Counted().Matches(s.Text))
                .SelectMany(m => new[] { $"unit.{m.Groups[1].Value}.one", $"unit.{m.Groups[1].Value}.many" }),
        ];

    [Fact]
    public void Every_key_that_a_check_uses_is_in_the_words_file_and_the_other_way_round() =>
        Assert.Equal(SentenceWords.English.Keys.Order(StringComparer.Ordinal), Used.Distinct().Order(StringComparer.Ordinal));

    [Fact]
    public void Every_text_of_the_words_file_can_be_filled_in()
    {
        foreach (var key in SentenceWords.English.Keys)
        {
            (string, Sentence)[] values =
            [
                .. SentenceWords.English.ValuesOf(key).Distinct().Select(name => (name, Sentence.Plain($"<{name}>"))),
            ];
            var said = Sentence.Of(key, values).ToString();
            Assert.NotEmpty(said);
            Assert.All(values, value => Assert.Contains($"<{value.Item1}>", said, StringComparison.Ordinal));
        }
    }

    [Fact]
    public void A_value_that_nobody_gives_fails_and_so_does_a_key_that_is_not_there()
    {
        Assert.Throws<KeyNotFoundException>(() => Sentence.Of("unit.frame.one").ToString());
        Assert.Throws<KeyNotFoundException>(() => Sentence.Of("unit.nothing").ToString());
    }

    [Fact]
    public void A_sentence_is_said_in_another_language_with_the_values_within_it()
    {
        var words = SentenceWords.Parse("# only these\nunit.frame.many = {n} Bilder\nlist.and = {before} und {last}\n");
        var said = Sentence.Of("list.and", ("before", "{last}"), ("last", Sentence.Of("unit.frame.many", ("n", "12"))));
        Assert.Equal("{last} und 12 Bilder", said.In(words));
        Assert.Equal("{last} and 12 frames", said.ToString());
    }

    [Fact]
    public void No_check_has_a_sentence_of_its_own() =>
        Assert.Empty(
            from source in Sources
            where !_withSentencesOfTheirOwn.Contains(source.File) && source.Text.Contains(" Check = new(\"", StringComparison.Ordinal)
            from literal in Literal().Matches(source.Text)
            where literal.Value.Count(c => c == ' ') >= 4 && !literal.Value.StartsWith("//", StringComparison.Ordinal)
            select $"{source.File}: {literal.Value}"
        );

    [GeneratedRegex("\"((?:unit|list|common|[a-z]+/[a-z-]+)\\.[a-z0-9.-]+)\"")]
    private static partial Regex Key();

    [GeneratedRegex(@"Count\([^""\n]*, ""([a-z]+)""\)")]
    private static partial Regex Counted();

    // A comment may hold a quotation mark.
    [GeneratedRegex(@"//[^\n]*|""(?:[^""\\\n]|\\.)*""")]
    private static partial Regex Literal();
}
