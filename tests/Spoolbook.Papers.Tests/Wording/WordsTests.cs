using System.Text.RegularExpressions;
using Spoolbook.Papers.Pages;
using Spoolbook.Papers.Wording;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Papers.Tests.Wording;

/// <summary>The words of the papers, in every language of the house.</summary>
public partial class WordsTests
{
    // Words that are the same in German: signs, units, and set jargon.
    static readonly HashSet<string> TheSameInGerman =
    [
        "unit-metres",
        "mark-test",
        "process-name-ecn-2",
        "cover-good-at",
        "film",
        "rated-short",
        "waste-letter-test",
        "wound-sign",
        "card-too-dark",
        "book.sheet.takes",
        "book.sheet.film",
        "book.line.takes",
        "book.code.push",
        "book.head.ei",
        "book.head.push",
        "book.head.takes",
        "book.head.take",
        "book.head.filter",
        "book.head.emulsion",
        "book.head.name",
        "unit-of-foot",
        "unit-of-metre",
        "unit-of-hour",
        "units-of-foot",
        "units-of-metre",
        "units-of-hour",
        "cost-push",
        "filter",
        "emulsion",
        "push",
        "name",
        "takes",
        "feet-a-minute",
        "metres-a-minute",
        "looks-normal",
        "picture-ruler-feet",
        "picture-ruler-metres",
        "pocket-take",
        "pocket-filter",
        "pocket-motor",
        "pocket-ran",
    ];

    static readonly HouseTemplates House = new();

    static Translations English { get; } = Translations.Parse(House.Find("words.en.txt")!.Text);

    static Translations German { get; } = Translations.Parse(House.Find("words.de.txt")!.Text);

    [Fact]
    public void The_houses_words_have_no_fault()
    {
        Assert.Empty(WordsCheck.Findings(House.Find("words.en.txt")!, English));
        Assert.Empty(WordsCheck.Findings(House.Find("words.de.txt")!, English));
    }

    [Fact]
    public void German_is_complete() => Assert.Empty(English.Keys.Except(German.Keys));

    [Fact]
    public void A_translation_fills_in_what_English_fills_in()
    {
        foreach (var key in German.Keys)
        {
            Assert.Equal(Places(English[key]), Places(German[key]));
        }
    }

    [Fact]
    public void No_English_is_left_in_German() =>
        Assert.Empty(German.Keys.Where(key => German[key] == English[key]).Except(TheSameInGerman));

    [Fact]
    public void Every_word_is_used_by_a_template_or_by_the_facts()
    {
        var templates = string.Concat(
            HouseTemplates
                .Names.Where(n => n.EndsWith(".html", StringComparison.Ordinal) || n.EndsWith(".js", StringComparison.Ordinal))
                .Select(n => House.Find(n)!.Text)
        );
        var root = Repository.Root;
        var code = string.Concat(
            Directory
                .EnumerateFiles(Path.Combine(root, "src", "Spoolbook.Papers"), "*.cs", SearchOption.AllDirectories)
                .Select(File.ReadAllText)
        );
        var families = Family()
            .Matches(code)
            .Select(m => m.Groups[1].Value)
            .Concat(FamilyOfScript().Matches(templates).Select(m => m.Groups[1].Value.Replace('_', '-')))
            .ToHashSet();
        var unused = English.Keys.Where(key =>
            !key.StartsWith("book.", StringComparison.Ordinal)
            && !Regex.IsMatch(templates, @"\bw\." + key.Replace('-', '_') + @"\b")
            && !code.Contains('"' + key + '"', StringComparison.Ordinal)
            && !families.Any(family => key.StartsWith(family, StringComparison.Ordinal))
            && !(
                Counted().Match(key) is { Success: true } counted
                && code.Contains('"' + counted.Groups[1].Value + '"', StringComparison.Ordinal)
            )
        );
        Assert.Empty(unused);
    }

    [Fact]
    public void Every_word_that_a_script_asks_for_is_there()
    {
        var script = House.Find("pocket-log.js")!.Text;
        var asked = Regex.Matches(script, @"\bw\.([a-z_]+)").Select(m => m.Groups[1].Value.Replace('_', '-')).ToHashSet();
        Assert.True(asked.Count > 100);
        Assert.Empty(asked.Except(English.Keys));
    }

    [Fact]
    public void A_users_own_file_is_flagged_with_line_and_column_of_each_slip()
    {
        var file = new TemplateText(
            "own/words.en.txt",
            "# ours\nlab-oder = Order\nfoot = Made on {maid}\nno key here\n  days-short = Mo Tu\npage-of = {0}/{1}\n"
        );

        var told = WordsCheck.Findings(file, English).ToList();

        Assert.Equal(["2:1", "3:16", "4:1", "5:3"], told.Select(f => FormattableString.Invariant($"{f.Place.Line}:{f.Place.Column}")));
        Assert.Contains("`lab-order`", told[0].Help, StringComparison.Ordinal);
        Assert.Contains("{made}", told[1].Help, StringComparison.Ordinal);
        Assert.Equal(Level.Error, told[3].Level);
    }

    [Fact]
    public void Braces_in_a_users_text_are_not_filled_in()
    {
        var words = Translations.Parse("line = {what} on {day}, {");
        Assert.Equal("{day} {x} on Monday, {", words.Fill("line", ("what", "{day} {x}"), ("day", "Monday")));
    }

    static List<string> Places(string text) => [.. Place().Matches(text).Select(m => m.Value).Distinct().Order(StringComparer.Ordinal)];

    [GeneratedRegex(@"\{[^{}]*\}")]
    private static partial Regex Place();

    [GeneratedRegex(@"\[""([a-z-]+-)"" \+")]
    private static partial Regex Family();

    [GeneratedRegex(@"\bw\['([a-z_]+_)' \+")]
    private static partial Regex FamilyOfScript();

    [GeneratedRegex("^(.+)-(?:one|many)$")]
    private static partial Regex Counted();
}
