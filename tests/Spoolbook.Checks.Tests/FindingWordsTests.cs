using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Checks.Tests;

/// <summary>What findings say is in the words file, and nothing in that file is unused.</summary>
public sealed partial class FindingWordsTests
{
    static readonly ImmutableArray<string> _rooms =
    [
        "Spoolbook.Checks",
        "Spoolbook.Shoot",
        "Spoolbook.Reading",
        "Spoolbook.Entry",
        "Spoolbook.Papers",
        "Spoolbook",
    ];

    // Where other things than findings are said: the reference of checks and of the file format, schemas, what an import
    // objects to. The YAML parser's own complaints are what a finding of ours is found by.
    static readonly ImmutableArray<string> _saySomethingElse =
    [
        "Spoolbook.Checks/CheckPage.cs",
        "Spoolbook.Checks/CheckReference.cs",
        "Spoolbook.Checks/Running/Tolerances.cs",
        "Spoolbook.Reading/Editing/",
        "Spoolbook.Reading/Keys/",
        "Spoolbook.Reading/Schemas/",
        "Spoolbook.Reading/Shipments/ShipmentFile.cs",
        "Spoolbook.Reading/Shipments/ShipmentKeys.cs",
        "Spoolbook.Reading/Trees/SyntaxFaults.cs",
    ];

    // The papers themselves have words files of their own.
    static readonly ImmutableArray<string> _findings =
    [
        "Spoolbook.Checks/",
        "Spoolbook.Reading/",
        "Spoolbook.Entry/Lines/LineFindings.cs",
        "Spoolbook.Entry/Lines/LineReader.cs",
        "Spoolbook.Entry/Lines/LineReading.cs",
        "Spoolbook.Entry/Lines/LineTokens.cs",
        "Spoolbook.Papers/Faults/",
        "Spoolbook.Papers/Pages/",
        "Spoolbook.Papers/Schools/",
        "Spoolbook.Papers/Wording/",
        "Spoolbook.Shoot/Shipments/ShipmentFaults.cs",
        "Spoolbook/Shipping/ShippingSchool.cs",
        "Spoolbook/TemplateFolder.cs",
    ];

    // Exceptions for programmers, and reasons for the compiler.
    static readonly ImmutableArray<string> _saidToNobody = ["Exception(", ": base(", "Justification = "];

    static IEnumerable<(string File, string Text)> Sources =>
        from room in _rooms
        let folder = Path.Combine(Repository.Root, "src", room)
        from file in Directory.EnumerateFiles(folder, "*.cs", SearchOption.AllDirectories)
        let name = room + "/" + Path.GetRelativePath(folder, file).Replace('\\', '/')
        where !name.Contains("/obj/", StringComparison.Ordinal)
        select (name, File.ReadAllText(file));

    static string[] Used =>
        [
            .. Sources.SelectMany(s => Key().Matches(s.Text)).Select(m => m.Groups[1].Value).Where(IsOfFindings),
            .. Sources
                .Where(s => s.File.StartsWith("Spoolbook.Checks/", StringComparison.Ordinal))
                .SelectMany(s => Counted().Matches(s.Text))
                .SelectMany(m => new[] { $"unit.{m.Groups[1].Value}.one", $"unit.{m.Groups[1].Value}.many" }),
        ];

    [Fact]
    public void Every_key_that_a_check_uses_is_in_the_words_file_and_the_other_way_round() =>
        Assert.Equal(SentenceTexts.English.Keys.Order(StringComparer.Ordinal), Used.Distinct().Order(StringComparer.Ordinal));

    [Fact]
    public void Every_text_of_the_words_file_can_be_filled_in()
    {
        foreach (var key in SentenceTexts.English.Keys)
        {
            (string, SentenceValue)[] values =
            [
                .. SentenceTexts.English.ValuesOf(key).Distinct().Select(name => (name, Sentence.Plain($"<{name}>"))),
            ];
            var said = Sentence.Of(key, values).ToString();
            Assert.NotEmpty(said);
            Assert.All(values, value => Assert.Contains($"<{value.Item1}>", said, StringComparison.Ordinal));
        }
    }

    [Fact]
    public void A_missing_value_fails_and_so_does_a_missing_key()
    {
        Assert.Throws<KeyNotFoundException>(() => Sentence.Of("unit.frame.one").ToString());
        Assert.Throws<KeyNotFoundException>(() => Sentence.Of("unit.nothing").ToString());
    }

    [Fact]
    public void A_sentence_is_translated_with_the_values_in_it()
    {
        var words = SentenceTexts.Parse("# only these\nunit.frame.many = {n} Bilder\nlist.and = {before} und {last}\n");
        var said = Sentence.Of("list.and", ("before", "{last}"), ("last", Sentence.Of("unit.frame.many", ("n", "12"))));
        Assert.Equal("{last} und 12 Bilder", said.In(words));
        Assert.Equal("{last} and 12 frames", said.ToString());
    }

    [Fact]
    public void A_value_that_begins_a_sentence_has_a_capital()
    {
        var words = SentenceTexts.Parse("group/what.message = {Owner} needs `{key}:`, and {Owner-s} is none\n");
        var said = Sentence.Of("group/what.message", ("owner", "ein Objektiv"), ("key", "lens"), ("owner-s", ""));
        Assert.Equal("Ein Objektiv needs `lens:`, and  is none", said.In(words));
        Assert.Equal(["owner", "key", "owner-s"], words.ValuesOf("group/what.message"));
    }

    [Fact]
    public void No_finding_has_a_sentence_of_its_own() =>
        Assert.Empty(
            from source in Sources
            where _findings.Any(place => source.File.StartsWith(place, StringComparison.Ordinal))
            where !_saySomethingElse.Any(place => source.File.StartsWith(place, StringComparison.Ordinal))
            from line in source.Text.Split('\n')
            where !_saidToNobody.Any(mark => line.Contains(mark, StringComparison.Ordinal))
            from literal in Literal().Matches(line)
            where Words().IsMatch(literal.Value) && !literal.Value.StartsWith("//", StringComparison.Ordinal)
            select $"{source.File}: {literal.Value}"
        );

    // The reader of keys says much about them and stands among the tables, whose descriptions are the reference's.
    [Theory]
    [InlineData("KeyFindings.cs")]
    [InlineData("KeyHomes.cs")]
    [InlineData("MapReader.cs")]
    public void What_is_said_about_keys_is_in_the_words_file_too(string file)
    {
        var source = Assert.Single(Sources, s => s.File == "Spoolbook.Reading/Keys/" + file);
        Assert.DoesNotContain(Literal().Matches(source.Text), m =>
            !m.Value.StartsWith("//", StringComparison.Ordinal) && Words().IsMatch(m.Value)
        );
    }

    // A part of an OOXML file has a name of the same form.
    static bool IsOfFindings(string key) =>
        key.Split('/') is not [var group, _] || CheckList.Groups.Contains(group, StringComparer.Ordinal);

    [GeneratedRegex("\"((?:unit|list|common|slip|not-looked-at|[a-z]+/[a-z-]+)\\.[a-z0-9.-]+)\"")]
    private static partial Regex Key();

    [GeneratedRegex(@"Count\([^""\n]*, ""([a-z]+)""\)")]
    private static partial Regex Counted();

    // A comment may have a quotation mark in it.
    [GeneratedRegex(@"//[^\n]*|""(?:[^""\\\n]|\\.)*""")]
    private static partial Regex Literal();

    // Two words of English are an expression of YAML, a pattern or a name as often as not; three are said to somebody.
    [GeneratedRegex("[A-Za-z]{2,}[,:]? [a-z]{2,}[,:]? [a-z]{2,}")]
    private static partial Regex Words();
}
