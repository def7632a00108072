using Spoolbook.Printing;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Tests;

/// <summary>A line of which a finding shows a few words.</summary>
public sealed class LongLineTests
{
    [Fact]
    public void A_finding_on_a_line_of_a_million_letters_costs_no_more_than_the_words_it_shows()
    {
        var line = string.Concat(Enumerable.Repeat("l, ", 400_000));
        var before = GC.GetAllocatedBytesForCurrentThread();

        var shown = ExcerptPrinter.Of(line, new Place("rolls/r01.yaml", 1, 600_001, 1), 100, new Ink(false));

        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 50_000);
        Assert.Equal((3, true), (shown.Count, shown[1].Contains("l, l", StringComparison.Ordinal)));
    }

    [Fact]
    public void An_excerpt_shows_a_sign_for_each_hidden_character_and_the_marker_stays_under_its_word()
    {
        var shown = ExcerptPrinter.Of("a: \u001b[2J\tgn", new Place("rolls/r01.yaml", 1, 9, 2), 100, new Ink(false));

        Assert.Equal([" 1 | a: \uFFFD[2J gn", "   |         ^^"], shown.Skip(1));
    }

    [Fact]
    public void Wherever_in_a_line_of_emoji_a_finding_is_its_marker_lies_within_the_words_shown()
    {
        foreach (var letter in (string[])["a", "🎞"])
        {
            var line = "s" + string.Concat(Enumerable.Repeat(letter, 60)) + ":";
            foreach (var column in Enumerable.Range(1, line.Length + 1))
            {
                var shown = ExcerptPrinter.Of(line, new Place("rolls/r01.yaml", 1, column, 3), 44, new Ink(false));

                Assert.InRange(shown[2].TrimEnd().Length, 1, shown[1].Length + 1);
            }
        }
    }
}
