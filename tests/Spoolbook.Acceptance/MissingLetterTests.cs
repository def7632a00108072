using System.Globalization;

namespace Spoolbook.Acceptance;

/// <summary>Letters that the papers' font lacks: one finding for each text, where it is written, with advice.</summary>
public sealed class MissingLetterTests : IDisposable
{
    readonly Bench _bench = new();
    readonly string _production;

    public MissingLetterTests()
    {
        _production = _bench.PathOf("production.yaml");
        File.Copy(Path.Combine(Repository.Root, "tests/Spoolbook.Acceptance/productions/hand-held-one-roll/sunday.yaml"), _production);
    }

    public void Dispose() => _bench.Dispose();

    [Fact]
    public void A_name_on_many_papers_is_flagged_once_at_its_line_and_column()
    {
        Write("Black-and-white reversal 100", "\"Reversal שלום\"");

        var told = Assert.Single(Report());

        Assert.Equal("production.yaml:12:21", told.Place);
        Assert.Contains("no ש (U+05E9), ל (U+05DC), ו (U+05D5) and ם (U+05DD): ", told.Message, StringComparison.Ordinal);
        Assert.Matches("\\): [a-zA-Z0-9-]+\\.pdf(, | and )[a-zA-Z0-9-]+\\.pdf", told.Message);
        Assert.Contains("   help: Write it in Latin, Greek or Cyrillic letters too", told.Whole, StringComparison.Ordinal);
    }

    [Fact]
    public void A_text_that_is_written_twice_is_flagged_with_both_places()
    {
        Write("note: Steps", "note: \"急いで\"");
        Write("note: Hands", "note: \"急いで\"");

        var told = Assert.Single(Report());

        Assert.StartsWith("production.yaml:25:", told.Place, StringComparison.Ordinal);
        Assert.Contains("the same text again: production.yaml:32:", told.Whole, StringComparison.Ordinal);
    }

    [Fact]
    public void A_letter_in_the_font_is_not_flagged_and_a_missing_sign_is_better_said_in_a_word()
    {
        Write("note: Steps", "note: \"Τέλος, конец, Łódź 🎬\"");

        var told = Assert.Single(Report());

        Assert.Contains("no 🎬 (U+1F3AC): camera-report-1.pdf prints a box instead.", told.Message, StringComparison.Ordinal);
        Assert.Contains("Say it in a word", told.Whole, StringComparison.Ordinal);
    }

    [Fact]
    public void A_name_in_a_remark_is_flagged_where_the_name_is_written()
    {
        // The title is in the head of every page with other words around it.
        Write("Sunday, Ropewalk Baths", "\"Sunday 日曜日\"");
        Write("note: Steps", "note: \"Sunday 日曜日 again\"");

        Assert.Equal(["production.yaml:3:8", "production.yaml:25:86"], Report().Select(t => t.Place));
    }

    [Fact]
    public void A_word_of_the_users_own_templates_is_flagged_where_a_template_prints_it()
    {
        Directory.CreateDirectory(_bench.PathOf("own"));
        File.WriteAllText(_bench.PathOf("own/words.en.txt"), "wrap-summary = Summary 札\n");

        Assert.Contains(Report("--templates", "own"), t =>
            t.Message.Contains("no 札 (U+672D)", StringComparison.Ordinal) && t.Place.Contains(".html:", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void A_production_in_another_script_has_a_bounded_number_of_findings()
    {
        var notes = string.Concat(
            Enumerable.Range(1, 60).Select(n => string.Create(CultureInfo.InvariantCulture, $"      - note: \"覚え書き {n}\"\n"))
        );
        Write("      - run-off:", notes + "      - run-off:");

        var told = Report();

        Assert.Equal(21, told.Count);
        Assert.Contains("Papers cannot show 40 more texts", told[^1].Message, StringComparison.Ordinal);
        Assert.Contains("production.yaml: 40", told[^1].Whole, StringComparison.Ordinal);
    }

    List<(string Place, string Message, string Whole)> Report(params string[] more)
    {
        var (status, printed, error) = _bench.Run(["make", "production.yaml", "--out", "papers", .. more]);
        Assert.True(status == 0, printed + error);
        return
        [
            .. printed
                .Split("\n\n")
                .Where(part => part.Contains("[paper/missing-glyph]", StringComparison.Ordinal))
                .Select(part =>
                {
                    var first = part.Split('\n')[0];
                    var level = first.IndexOf(": warning: ", StringComparison.Ordinal);
                    return (first[..level], first[level..], part);
                }),
        ];
    }

    void Write(string old, string written)
    {
        var text = File.ReadAllText(_production);
        Assert.Contains(old, text, StringComparison.Ordinal);
        File.WriteAllText(_production, text.Replace(old, written, StringComparison.Ordinal));
    }
}
