using System.Text.RegularExpressions;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Shoot.Tests.Findings;

/// <summary>Findings say in German what they say in English: nothing missing, nothing left in English.</summary>
public sealed partial class GermanFindingsTests
{
    // Abbreviations, and texts of nothing but values.
    static readonly HashSet<string> TheSameInGerman =
    [
        "slip.whole",
        "slip.whole.empty",
        "list.comma",
        "unit.feet",
        "unit.feet-and-inches",
        "common.form.message.objection",
        "common.form.help.objection",
        "counter/time-out-of-order.other",
        "paper/template.value.include-refused",
    ];

    static SentenceTexts English => SentenceTexts.English;

    static SentenceTexts German => SentenceTexts.For("de");

    [Fact]
    public void The_German_file_has_the_keys_of_the_English_one_in_the_same_order() => Assert.Equal(English.Keys, German.Keys);

    [Fact]
    public void A_text_has_the_same_values_in_both_languages() =>
        Assert.DoesNotContain(English.Keys, key => !English.ValuesOf(key).ToHashSet().SetEquals(German.ValuesOf(key)));

    [Fact]
    public void What_is_written_into_a_file_is_the_same_in_both_languages() =>
        Assert.DoesNotContain(English.Keys, key => !Written(English, key).SequenceEqual(Written(German, key)));

    [Fact]
    public void No_text_is_left_in_English() =>
        Assert.Equal(
            TheSameInGerman.Order(StringComparer.Ordinal),
            German.Keys.Where(key => German.TextOf(key) == English.TextOf(key)).Order(StringComparer.Ordinal)
        );

    [Fact]
    public void No_text_is_empty() => Assert.DoesNotContain(German.Keys, key => string.IsNullOrWhiteSpace(German.TextOf(key)));

    [Fact]
    public void A_text_ends_in_a_full_stop_in_both_languages_or_in_none() =>
        Assert.DoesNotContain(English.Keys, key => English.TextOf(key).EndsWith('.') != German.TextOf(key).EndsWith('.'));

    [Fact]
    public void A_count_is_translated_with_the_sentence_around_it()
    {
        var frames = Sentence.Of("unit.frame.many", ("n", "12"));
        var late = Sentence.Of("counter/rewind-missed.message.late", ("take", "1B/1"), ("amount", frames), ("near-take", "1A/1"));
        Assert.Equal("Der Durchgang von Take 1B/1 beginnt 12 Bilder zu spät, um auf Take 1A/1 zu liegen", late.In(German));
    }

    // German may put two of them the other way round.
    static IEnumerable<string> Written(SentenceTexts texts, string key) =>
        InBackquotes().Matches(texts.TextOf(key)).Select(m => m.Value).Order(StringComparer.Ordinal);

    [GeneratedRegex("`[^`]*`")]
    private static partial Regex InBackquotes();
}
